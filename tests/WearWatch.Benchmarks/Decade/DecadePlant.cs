using System.Globalization;
using MathNet.Numerics.Distributions;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Gauging;
using WearWatch.Inspections;
using WearWatch.Signals;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Decade;

/// <summary>
/// What 1,000 chains leave in ten years, straight into the memory: each measured once a fortnight, lubricated once a week,
/// inspected once a quarter, replaced every other year, with an hour counter and a thermometer that each tell every quarter of
/// an hour.
/// </summary>
internal sealed class DecadePlant(WearDb db, DateTimeOffset now)
{
    public const int Chains = 1_000;
    public const int Years = 10;

    private const int Days = 365 * Years;
    private const int PitchesMeasured = 40;
    private const double PitchMm = 25.4;
    private const double HoursADay = 16;
    private const int MessagesAnHour = 4;
    private const int RawDays = 30;
    private const int HourlyDays = 400;

    /// <summary>So many chains are written in one transaction.</summary>
    private const int AtOnce = 50;

    /// <summary>The chains of the register.</summary>
    public async Task RegisterAsync()
    {
        db.Chains.AddRange(Enumerable.Range(0, Chains).Select(i =>
        {
            var row = new ChainRow { Name = $"K-{i:0000}" };
            row.Take(new ChainCard
            {
                Name = row.Name,
                Line = $"Line {i % 40:00}",
                ChainType = "16B-1",
                PitchMm = PitchMm,
                Pitches = 100,
                FittedAt = At(0),
                FittedCounter = new(0),
            });
            return row;
        }));
        await db.SaveChangesAsync();
    }

    public Task ReadingsAsync() => EachAsync(14, (chain, day) => new ReadingRow
    {
        ChainId = chain,
        Key = Guid.NewGuid().ToString(),
        Fingerprint = Fingerprint(chain, day),
        TakenAt = At(day),
        CounterH = day * HoursADay,
        Tool = Tool.Tape,
        Pitches = PitchesMeasured,
        LengthMm = PitchesMeasured * PitchMm * (1 + day % 730 / 30_000.0),
        ToldBy = "Ina Technician",
        ReceivedAt = At(day),
    });

    public Task LubricationsAsync() => EachAsync(7, (chain, day) => Event(chain, day, ChainEventKind.Oiling));

    public Task ReplacementsAsync() => EachAsync(730, (chain, day) => Event(chain, day, ChainEventKind.Replacement));

    public Task InspectionsAsync() => EachAsync(91, (chain, day) => new InspectionRow
    {
        ChainId = chain,
        Key = Guid.NewGuid().ToString(),
        TakenAt = At(day),
        Findings = [.. Enum.GetValues<InspectionPoint>().Take(6).Select(point => new Finding(point, day % 5 == 0))],
        ToldBy = "Ina Technician",
        ReceivedAt = At(day),
    });

    public Task NoticesAsync() => EachAsync(91, (chain, day) => new NoticeRow
    {
        ChainId = chain,
        Kind = NoticeKind.RateHasRisen,
        Why = $"It wears {1.4:0.0} times as fast as before: {0.31:0.00} % in 1,000 h.",
        WhatToDo = $"Look at lubrication, alignment and load; measure again within a week.",
        RaisedAt = At(day),
        EndedAt = At(day + 20),
        JudgedBy = "Ina Technician",
    });

    /// <summary>Of one forecast a day those that the thinning leaves: the first of each stretch.</summary>
    public Task ForecastsAsync()
    {
        var kept = Enumerable.Range(0, Days + 1).GroupBy(Stretch).Select(some => some.Min()).ToHashSet();
        return EachAsync(1, (chain, day) => Forecast(chain, day), kept.Contains);
    }

    /// <summary>Messages of 30 days, hours of 400, days of the rest, as the thinning of telemetry leaves them.</summary>
    public async Task TelemetryAsync()
    {
        const int hours = HourlyDays * 24, messages = RawDays * 24 * MessagesAnHour, days = Days - HourlyDays;
        const long aMessage = TimeSpan.TicksPerHour / MessagesAnHour;
        db.Database.SetCommandTimeout(TimeSpan.FromHours(1));
        await db.Database.ExecuteSqlAsync($"CREATE TEMP TABLE Steps (N INTEGER PRIMARY KEY)");
        await db.Database.ExecuteSqlAsync($"""
            WITH RECURSIVE S (N) AS (SELECT 0 UNION ALL SELECT N + 1 FROM S WHERE N < {hours}) INSERT INTO Steps SELECT N FROM S
            """);
        var (last, lastHour) = (now.UtcTicks, Hour(now).UtcTicks);
        var lastDay = now.UtcDateTime.Date.AddDays(-HourlyDays).Ticks;
        foreach (var kind in new[] { (int)TelemetryKind.RunningCounter, (int)TelemetryKind.Temperature })
        {
            await db.Database.ExecuteSqlAsync($"""
                INSERT INTO Telemetry (MessageId, ChainId, Kind, At, Value, ReceivedAt, AwaitsForwarding)
                SELECT lower(hex(randomblob(16))), Id, {kind}, {last} - N * {aMessage}, N / 7.0, {last} - N * {aMessage}, 0
                FROM Steps, Chains WHERE N < {messages} ORDER BY N DESC
                """);
            await db.Database.ExecuteSqlAsync($"""
                INSERT INTO TelemetryHours (ChainId, Kind, Hour, Count, Sum, Min, Max, Concluded)
                SELECT Id, {kind}, {lastHour} - N * {TimeSpan.TicksPerHour}, 4, N / 7.0, N / 9.0, N / 11.0, 4
                FROM Steps, Chains WHERE N < {hours} ORDER BY N DESC
                """);
            await db.Database.ExecuteSqlAsync($"""
                INSERT INTO TelemetryDays (ChainId, Kind, Day, Count, Sum, Min, Max)
                SELECT Id, {kind}, {lastDay} - N * {TimeSpan.TicksPerDay}, 96, N / 7.0, N / 9.0, N / 11.0
                FROM Steps, Chains WHERE N < {days} ORDER BY N DESC
                """);
        }
    }

    private static DateTimeOffset Hour(DateTimeOffset at) => at.AddTicks(-(at.UtcTicks % TimeSpan.TicksPerHour));

    private static string Fingerprint(int chain, int day) => string.Create(CultureInfo.InvariantCulture, $"{chain:x16}{day:x16}");

    private async Task EachAsync<T>(int everyDays, Func<int, int, T> row, Func<int, bool>? isKept = null)
        where T : class
    {
        var chains = await db.Chains.OrderBy(c => c.Id).Select(c => c.Id).ToListAsync();
        foreach (var some in chains.Chunk(AtOnce))
        {
            await using var transaction = await db.Database.BeginTransactionAsync();
            await db.AddManyAsync([.. from day in Enumerable.Range(1, Days / everyDays).Select(i => i * everyDays)
                                      where isKept?.Invoke(day) != false
                                      from chain in some
                                      select row(chain, day)]);
            await transaction.CommitAsync();
        }
    }

    private DateTimeOffset At(int day) => now.AddDays(day - Days);

    /// <summary>A day of the last hundred is a stretch of its own, then a week is, then four weeks are.</summary>
    private (int Days, long Number) Stretch(int day)
    {
        var length = (Days - day) switch { <= 100 => 1, <= 730 => 7, _ => 28 };
        return (length, length == 1 ? day : At(day).UtcTicks / TimeSpan.TicksPerDay / length);
    }

    private EventRow Event(int chain, int day, ChainEventKind kind) => new()
    {
        ChainId = chain,
        Key = Guid.NewGuid().ToString(),
        Fingerprint = $"{kind} {Fingerprint(chain, day)}",
        Kind = kind,
        At = At(day),
        CounterBeforeH = day * HoursADay,
        CounterAfterH = kind == ChainEventKind.Replacement ? day * HoursADay : null,
        ToldBy = "Ina Technician",
        ReceivedAt = At(day),
    };

    private ForecastRow Forecast(int chain, int day) => new()
    {
        ChainId = chain,
        MadeAt = At(day),
        IsLatest = day == Days,
        ModelVersion = "20261130-020000",
        LimitSource = "[8]",
        LimitPct = 3,
        Life = day / 730,
        HoursAtLastReading = day * HoursADay,
        HoursNow = day * HoursADay,
        ReadingsUsed = day % 730 / 14,
        ElongationPct = day % 730 / 300.0,
        ElongationSdPct = 0.0321 + chain / 1e6,
        RatePctPer1000H = 0.2083 + chain / 1e6,
        LogRateSd = 0.1017 + chain / 1e6,
        PercentilesH = [.. Enumerable.Range(1, 99)
            .Select(p => (4_000 + chain) * Math.Exp(0.3 * Normal.InvCDF(0, 1, p / 100.0)))],
        EarlyDate = At(day + 150),
        MiddleDate = At(day + 250),
        LateDate = At(day + 400),
        Condition = Condition.WithinLimit,
    };
}
