using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Lifting;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Demo;

/// <summary>
/// Gives the demo plant's lifting chains certificates, proof tests and examinations, all invented: one is left overdue and one
/// is quarantined, as examples.
/// </summary>
public sealed class DemoRegister(
    IDbContextFactory<WearDb> database, PlantClock clock, AppointmentDesk appointments, LiftingCardDesk cards,
    ExaminationDesk examinations, LiftingUseDesk use)
{
    private const string Keeper = "store";
    private const string Examiner = "Runa";
    private const int MonthsOverdue = 14;

    /// <summary>Enters it all once; what a person has entered since stays.</summary>
    public async Task FillAsync(CancellationToken ct)
    {
        var today = (await clock.NowAsync(ct)).Today;
        var chains = await LiftingAsync(ct);
        await using (var db = await database.CreateDbContextAsync(ct))
            if (chains.Count == 0 || await db.Appointments.AnyAsync(ct)) return;
        await appointments.AppointAsync(
            new AppointmentRow
            {
                Person = Examiner,
                Qualification = "trained by the trucks' maker, twelve years of examining lifting gear",
                From = today.AddYears(-3),
                Until = today.AddYears(2),
                AppointedBy = "the mill's management",
            }, ct);
        for (var i = 0; i < chains.Count; i++)
        {
            var (chain, fitted) = chains[i];
            await cards.TakeAsync(new NewLiftingCard(chain.Name, null, Entry(chain, fitted, i)), ct);
            var months = i == 0 ? MonthsOverdue : 2 + i % 8;
            var on = today.AddMonths(-months);
            if (i > 0 && fitted >= on) on = today < fitted.AddDays(1) ? today : fitted.AddDays(1);
            await examinations.TakeAsync(Report(chain, on, i), ct);
        }

        await use.TakeAsync(
            new NewLiftingStep(
                "demo-quarantine", chains[^1].Chain.Name, LiftingStepKind.Quarantined, "Ina",
                "an anchor bolt is bent; tagged and blocked", []), ct);
    }

    /// <summary>The chains that lift with the day on which each was fitted, the oldest first.</summary>
    private async Task<IReadOnlyList<(ChainRow Chain, DateOnly Fitted)>> LiftingAsync(CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        var found = new List<(ChainRow Chain, DateOnly Fitted)>();
        foreach (var chain in (await db.Chains.AsNoTracking().ToListAsync(ct)).Where(c => c.HoldsLoad))
        {
            var replaced = (await db.StandingEventsAsync(chain.Id, ct)).LastOrDefault(e => e.Kind == ChainEventKind.Replacement);
            var fitted = replaced?.At ?? chain.FittedAt ?? DateTimeOffset.MinValue;
            found.Add((chain, DateOnly.FromDateTime(fitted.Date)));
        }

        return [.. found.OrderBy(f => f.Fitted).ThenBy(f => f.Chain.Name, StringComparer.Ordinal)];
    }

    private static LiftingCardRow Entry(ChainRow chain, DateOnly fitted, int number) => new()
    {
        Key = "demo-entry-" + chain.Name,
        By = Keeper,
        Use = LiftingUse.Truck,
        WorkingLoadKg = 1600 + 400 * (number % 4),
        WorkingLoadOf = "one chain",
        CertificateNumber = $"M-{2100 + 7 * number}",
        CertificateOn = fitted,
        ProofTestOn = fitted,
        ProofLoadKg = 2 * (1600 + 400 * (number % 4)),
        ProofTestNumber = $"P-{880 + number}",
        Maker = "made up for the demonstration",
        Standard = "ISO 4347",
        TraceMark = $"LK{31 + number}",
    };

    private static NewExamination Report(ChainRow chain, DateOnly on, int number) => new()
    {
        Key = "demo-examination-" + chain.Name,
        Chain = chain.Name,
        On = on,
        Examiner = Examiner,
        Occasion = ExaminationOccasion.Periodic,
        Result = ExaminationResult.NothingFound,
        Points = [.. chain.Family.CheckPoints(chain.HoldsLoad).Select(p => new PointResult(p.Point, PointOutcome.NothingFound))],
        ReportNumber = $"E-{410 + number}",
        ToldBy = Keeper,
    };
}
