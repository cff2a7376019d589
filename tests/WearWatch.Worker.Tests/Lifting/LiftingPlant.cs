using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Lifting;
using WearWatch.Plant.Register;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Lifting;

/// <summary>A plant in the United Kingdom with one leaf chain, and what people enter about it.</summary>
public abstract class LiftingPlant : IAsyncLifetime
{
    protected const string Name = "LC-1";

    protected static readonly DateOnly Today = DateOnly.FromDateTime(TestPlant.Start.Date);

    private int made;

    protected TestPlant Plant { get; private set; } = null!;

    protected static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        Plant = await TestPlant.OpenAsync();
        await Plant.Get<PlantSettings>().ChangeAsync(p => p.LawRegion = LawRegion.UnitedKingdom, ct: Ct);
        await Plant.Get<RegisterDesk>().AddAsync(
            new ChainCard { Name = Name, Line = "Store", Family = ChainFamily.Named("leaf"), PitchMm = 19.05 }, "Vera", ct: Ct);
    }

    public async ValueTask DisposeAsync()
    {
        await Plant.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    /// <summary>A report that all points were examined and nothing was found.</summary>
    protected static NewExamination Nothing { get; } = new()
    {
        Key = "",
        Chain = Name,
        On = Today,
        Examiner = "Ola",
        Result = ExaminationResult.NothingFound,
        Points =
        [
            .. ChainFamily.Named("leaf").CheckPoints(lifts: true)
                .Select(p => new PointResult(p.Point, PointOutcome.NothingFound)),
        ],
        ToldBy = "Vera",
    };

    protected static LiftingCardRow Card(int? months = null, long? scheme = null, string why = "", string set = "") => new()
    {
        Key = Guid.NewGuid().ToString(),
        By = "Vera",
        Why = why,
        Use = LiftingUse.Truck,
        CertificateNumber = "77-1204",
        ChainSet = set,
        ExaminationMonths = months,
        WrittenSchemeFileId = scheme,
    };

    protected Task<IntakeAnswer> EnterAsync(LiftingCardRow card, long? basis = null) =>
        Plant.Get<LiftingCardDesk>().TakeAsync(new NewLiftingCard(Name, basis, card), Ct);

    protected Task<IntakeAnswer> ExamineAsync(NewExamination report) =>
        Plant.Get<ExaminationDesk>().TakeAsync(report with { Key = $"e{++made}" }, Ct);

    protected Task<IntakeAnswer> FindAsync(bool found) => Plant.Get<InspectionDesk>().TakeAsync(
        new NewInspection($"l{++made}", Name, null, null, [new(InspectionPoint.CrackedOrTurnedParts, found)], "Ina"), Ct);

    protected Task<IntakeAnswer> StepAsync(LiftingStepKind kind, string by, params InspectionPoint[] closes) =>
        Plant.Get<LiftingUseDesk>().TakeAsync(new NewLiftingStep($"s{++made}", Name, kind, by, "looked at it", closes), Ct);

    protected Task<IntakeAnswer> ReleaseAsync(string by) =>
        StepAsync(LiftingStepKind.Released, by, InspectionPoint.CrackedOrTurnedParts);

    protected async Task<long> AppointAsync(string line = "", DateOnly? until = null) =>
        Taken(await AppointAnswerAsync(line: line, until: until));

    protected Task<IntakeAnswer> AppointAnswerAsync(string by = "the head", string line = "", DateOnly? until = null) =>
        Plant.Get<AppointmentDesk>().AppointAsync(new AppointmentRow
        {
            Person = "Ola",
            Qualification = "trained by the maker, ten years",
            Line = line,
            From = Today.AddYears(-1),
            Until = until ?? Today.AddYears(3),
            AppointedBy = by,
        }, Ct);

    protected async Task<LiftingState> StateAsync()
    {
        await using var db = Plant.Db();
        return (await db.LiftingStates.SingleAsync(Ct)).ToState();
    }

    protected async Task<IEnumerable<NoticeKind>> NoticesAsync() => (await OpenAsync()).Select(n => n.Kind);

    protected async Task<(NoticeKind Kind, bool Urgent)[]> OpenAsync()
    {
        await using var db = Plant.Db();
        return [.. (await db.Notices.Where(n => n.EndedAt == null).OrderBy(n => n.Kind).ToListAsync(Ct))
            .Where(n => LiftingNotices.IsOne(n.Kind)).Select(n => (n.Kind, n.Urgent))];
    }

    protected static long Taken(IntakeAnswer answer) => answer is IntakeAnswer.Refused refused
        ? throw new InvalidOperationException(string.Join(" ", refused.Refusals.Select(r => $"{r.Field}: {r.Reason}")))
        : Assert.IsType<IntakeAnswer.Taken>(answer).Id;

    protected static IEnumerable<string> Fields(IntakeAnswer answer) =>
        Assert.IsType<IntakeAnswer.Refused>(answer).Refusals.Select(r => r.Field);
}
