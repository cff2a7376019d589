using WearWatch.Chains;
using WearWatch.Planning.Windows;
using WearWatch.Plant.Planning;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>What a small mill holds: four chains on two lines, some spares, and a shutdown of both every fortnight.</summary>
internal static class MillRows
{
    private static readonly string[] Lines = ["Debarking", "Press"];

    /// <summary>Writes it into an empty database.</summary>
    public static async Task AddAsync(WearDb db, PlanInputs inputs, DateTimeOffset now, CancellationToken ct)
    {
        ChainRow[] chains =
        [
            Chain("D-1", "Debarking", 80), Chain("D-2", "Debarking", 81), Chain("P-1", "Press", 100), Chain("P-2", "Press", 100),
        ];
        db.Chains.AddRange(chains);
        await db.SaveChangesAsync(ct);
        double[] medians = [500, 900, 1500, 1600];
        db.Forecasts.AddRange(chains.Select((c, i) => Forecast(c.Id, medians[i], now)));
        db.Spares.Add(
            new SpareRow { Kind = "Chain", Designation = "16B-1", InStock = 160, LeadDays = 28, PackSize = 160, Price = 3 });
        await db.SaveChangesAsync(ct);
        var first = DateTime.SpecifyKind(now.UtcDateTime.Date.AddDays(5).AddHours(6), DateTimeKind.Unspecified);
        await inputs.AddAsync([.. Lines.Select(line => new WindowRule
        {
            Id = line,
            Line = line,
            FirstStart = first,
            Length = TimeSpan.FromHours(8),
            Recurrence = "FREQ=WEEKLY;INTERVAL=2",
            Crew = "fitters",
            CrewHours = 16,
        })], ct);
    }

    private static ChainRow Chain(string name, string line, int pitches) => new()
    {
        Name = name,
        Line = line,
        Position = "drive",
        ChainType = "16B-1",
        PitchMm = 25.4,
        Pitches = pitches,
        SprocketTeeth = [17, 57],
    };

    /// <summary>A forecast whose hours to the limit spread evenly about a median.</summary>
    public static ForecastRow Forecast(
        int chainId, double medianH, DateTimeOffset now, DateTimeOffset? outOfUseBy = null) => new()
        {
            ChainId = chainId,
            MadeAt = now,
            IsLatest = true,
            ModelVersion = "broad prior",
            ReadingsUsed = 8,
            HoursAtLastReading = 6000,
            HoursNow = 6000,
            ElongationPct = 2.4,
            RatePctPer1000H = 0.4,
            LogRateSd = 0.2,
            LimitPct = 3,
            LimitReason = LimitReason.General,
            LimitSource = "test",
            PercentilesH = [.. Enumerable.Range(1, 99).Select(p => medianH * (0.5 + p / 100.0))],
            EarlyDate = now.AddHours(0.55 * medianH),
            MiddleDate = now.AddHours(medianH),
            LateDate = now.AddHours(1.45 * medianH),
            Condition = Condition.PlanASwap,
            OutOfUseBy = outOfUseBy,
        };
}
