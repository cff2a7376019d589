using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Chains;
using WearWatch.Dashboard.Tests.People;
using WearWatch.Gauging;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Browser.Tests;

/// <summary>The year after the decision about the bad lot of <see cref="SeededLots"/>: what was done and measured.</summary>
internal static class LotYear
{
    private const int Days = 367;
    private const int HoursBetweenReadings = 720;

    /// <summary>Chains of the lot that still run are replaced at once, the others after half a year; all by lot A-03.</summary>
    public static async Task GoByAsync(IServiceProvider services, MovedClock clock)
    {
        var begin = clock.GetUtcNow();
        clock.MoveOn(TimeSpan.FromDays(Days));
        await using var db = await services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync();
        var chains = await db.Chains.Where(c => c.Line == "Sorting").OrderBy(c => c.Name).ToListAsync();
        foreach (var (i, chain) in chains.Index())
        {
            var counter = await db.Readings.Where(r => r.ChainId == chain.Id).MaxAsync(r => r.CounterH!.Value);
            var swapped = i == 0 ? 0 : chain.Lot == "B-17" ? 1 : Days * 12.0; // hours from the decision; the first by hand
            if (i > 0) Replace(db, chain, counter + swapped, begin.AddHours(swapped));
            for (var hours = HoursBetweenReadings; swapped + hours < Days * 24; hours += HoursBetweenReadings)
            {
                var percent = hours * 0.0002 * (0.9 + i % 8 * 0.03);
                Measure(db, chain, counter + swapped + hours, percent, begin.AddHours(swapped + hours));
            }
        }

        await db.SaveChangesAsync();
        await services.GetRequiredService<ChainReview>().ReviewAsync([.. chains.Select(c => c.Id)]);
    }

    /// <summary>When the last of the chains is replaced: half a year after the decision.</summary>
    public static DateTimeOffset LastSwap(DateTimeOffset decided) => decided.AddHours(Days * 12.0);

    private static void Replace(WearDb db, ChainRow chain, double counter, DateTimeOffset at)
    {
        db.Events.Add(new EventRow
        {
            ChainId = chain.Id,
            Key = $"year-{chain.Name}",
            Kind = ChainEventKind.Replacement,
            At = at,
            CounterBeforeH = Math.Round(counter),
            CounterAfterH = Math.Round(counter),
            Lot = "A-03",
            ReceivedAt = at,
            ToldBy = "fitter",
        });
    }

    private static void Measure(WearDb db, ChainRow chain, double counter, double percent, DateTimeOffset at) =>
        db.Readings.Add(new ReadingRow
        {
            ChainId = chain.Id,
            Key = $"year-{chain.Name}-{counter:0}",
            TakenAt = at,
            CounterH = Math.Round(counter),
            Tool = Tool.Tape,
            Pitches = 100,
            LengthMm = 100 * chain.PitchMm * (1.001 + percent / 100),
            ReceivedAt = at,
            ToldBy = "technician",
        });
}
