using System.Globalization;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Desk;

/// <summary>
/// A plant of 10,000 chains with 40 readings each, straight into the memory: four of ten have reached the limit once and were
/// replaced.
/// </summary>
internal static class LargeFleet
{
    /// <summary>Of each life, where forecasts are kept from.</summary>
    private static readonly double[] shares = [0.24, 0.49, 0.74, 0.89];

    public const int Chains = 10_000;
    public const int ReadingsEach = 40;

    private const double LimitPercent = 3;
    private const double PitchMm = 25.4;
    private const int Pitches = 40;

    public static async Task SeedAsync(WearDb db, DateTimeOffset now)
    {
        var chance = new Random(7);
        List<ChainRow> chains = [.. Enumerable.Range(0, Chains).Select(i => Chain(i, chance, now))];
        db.Chains.AddRange(chains);
        await db.SaveChangesAsync();
        foreach (var some in chains.Chunk(500))
        {
            var told = some.Select(chain => Told(chain, chance, now)).ToList();
            await using var transaction = await db.Database.BeginTransactionAsync();
            await db.AddManyAsync([.. told.SelectMany(t => t.Readings)]);
            await db.AddManyAsync([.. told.SelectMany(t => t.Events)]);
            db.Forecasts.AddRange(told.SelectMany(t => t.Forecasts));
            db.Notices.AddRange(told.SelectMany(t => t.Notices));
            await db.SaveChangesAsync();
            await transaction.CommitAsync();
            db.ChangeTracker.Clear();
        }
    }

    private static ChainRow Chain(int number, Random chance, DateTimeOffset now)
    {
        var row = new ChainRow { Name = string.Create(CultureInfo.InvariantCulture, $"K-{number:00000}") };
        row.Take(new ChainCard
        {
            Name = row.Name,
            Line = $"Line {number % 40:00}",
            ChainType = (number % 5) switch { 0 => "16B-1", 1 => "20B-1", 2 => "12B-1", 3 => "24B-1", _ => "10B-1" },
            PitchMm = PitchMm,
            Pitches = 100,
            FittedAt = now.AddYears(-2),
            FittedCounter = new(0),
            LimitPercent = LimitPercent,
            LimitSetReason = "benchmark",
            Lot = $"A-{number % 150:000}",
            Duty = new Duty
            {
                RelativeLoad = 0.2 + chance.NextDouble(),
                SpeedMetresPerSecond = 0.3 + 3 * chance.NextDouble(),
                Lubrication = (LubricationState)chance.Next(4),
                Dust = (DustLevel)chance.Next(3),
            },
        });
        return row;
    }

    private static (List<ReadingRow> Readings, List<EventRow> Events, List<ForecastRow> Forecasts, List<NoticeRow> Notices) Told(
        ChainRow chain, Random chance, DateTimeOffset now)
    {
        var rate = 0.2 * chain.LoadRel!.Value / 0.5 * Math.Exp(0.3 * Normal(chance)); // percent per 1,000 h
        var life = 1000 * (LimitPercent - 0.2) / rate;
        var isSecond = chain.Id % 10 < 4;
        var total = life * (isSecond ? 1.5 : 0.2 + 0.7 * chance.NextDouble());
        var (readings, events) = (new List<ReadingRow>(), new List<EventRow>());
        DateTimeOffset At(double hours) => now.AddYears(-2) + TimeSpan.FromDays(730 * hours / total);
        for (var i = 1; i <= ReadingsEach; i++)
        {
            var hours = total * i / ReadingsEach;
            var worn = isSecond && hours > 1.04 * life ? hours - 1.04 * life : hours;
            var percent = 0.2 + rate * worn / 1000 + 0.03 * Normal(chance);
            readings.Add(new ReadingRow
            {
                ChainId = chain.Id,
                Key = $"{chain.Id}-{i}",
                Fingerprint = $"{chain.Id}-{i}",
                TakenAt = At(hours),
                CounterH = Math.Round(hours, 1),
                Tool = Tool.Tape,
                Pitches = Pitches,
                LengthMm = Pitches * PitchMm * (1 + percent / 100),
                ToldBy = "benchmark",
                ReceivedAt = At(hours),
            });
        }

        if (isSecond)
            events.Add(new EventRow
            {
                ChainId = chain.Id,
                Key = $"{chain.Id}-r",
                Fingerprint = $"{chain.Id}-r",
                Kind = ChainEventKind.Replacement,
                At = At(1.04 * life),
                CounterBeforeH = 1.04 * life,
                CounterAfterH = 1.04 * life,
                Lot = $"B-{chain.Id % 150:000}",
                ReceivedAt = now,
            });
        for (var i = 0; i < 5; i++)
            events.Add(new EventRow
            {
                ChainId = chain.Id,
                Key = $"{chain.Id}-o{i}",
                Fingerprint = $"{chain.Id}-o{i}",
                Kind = ChainEventKind.Oiling,
                At = now.AddDays(-30 * i),
                ReceivedAt = now,
            });
        List<ForecastRow> forecasts =
            [Forecast(chain, isSecond ? 1 : 0, total - (isSecond ? 1.04 * life : 0), life, rate, now, isLatest: true)];
        if (isSecond) forecasts.AddRange(shares.Select(share =>
            Forecast(chain, 0, share * life, life * Math.Exp(0.3 * Normal(chance)), rate, At(share * life), isLatest: false)));
        List<NoticeRow> notices = chain.Id % 25 == 0
            ? [new NoticeRow
            {
                ChainId = chain.Id,
                Kind = NoticeKind.RateHasRisen,
                Why = $"It wears faster.",
                WhatToDo = $"Look.",
                RaisedAt = now.AddDays(-chain.Id % 60),
            }]
            : [];
        return (readings, events, forecasts, notices);
    }

    private static ForecastRow Forecast(
        ChainRow chain, int life, double hoursNow, double lifeHours, double rate, DateTimeOffset at, bool isLatest)
    {
        var left = Math.Max(10, lifeHours - hoursNow);
        return new ForecastRow
        {
            ChainId = chain.Id,
            Life = life,
            MadeAt = at,
            IsLatest = isLatest,
            ModelVersion = "m1",
            LimitSource = "benchmark",
            LimitPct = LimitPercent,
            HoursAtLastReading = hoursNow,
            HoursNow = hoursNow,
            ReadingsUsed = ReadingsEach,
            ElongationPct = 0.2 + rate * hoursNow / 1000,
            RatePctPer1000H = rate,
            LogRateSd = 0.1,
            PercentilesH = [.. Enumerable.Range(1, 99)
                .Select(p => left * Math.Exp(0.3 * MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, p / 100.0)))],
            EarlyDate = at.AddHours(0.6 * left),
            MiddleDate = at.AddHours(left),
            Condition = left < 500 ? Condition.PlanASwap : Condition.WithinLimit,
        };
    }

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
