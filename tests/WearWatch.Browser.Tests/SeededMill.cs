using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Gauging;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Browser.Tests;

/// <summary>A plant of 3,000 chains with forecasts written straight into the memory: what the list has to carry.</summary>
public static class SeededMill
{
    private static readonly string[] Lines = ["Debarking", "Chipping", "Drying", "Forming", "Press", "Packing"];

    /// <summary>Fills an empty memory.</summary>
    public static async Task FillAsync(IServiceProvider services, int chains)
    {
        await using var db = await services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync();
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        var rows = Enumerable.Range(0, chains).Select(i => new ChainRow
        {
            Name = $"SEED-{i:0000}",
            Line = Lines[i % Lines.Length],
            Position = $"drive {i / Lines.Length:000}",
            ChainType = i % 3 == 0 ? "20B-2" : "16B-1",
            Family = i % 5 == 0 ? ChainFamily.Named("conveyor") : ChainFamily.Usual,
            PitchMm = 25.4,
            Pitches = 120,
        }).ToList();
        db.Chains.AddRange(rows);
        await db.SaveChangesAsync();
        var readings = rows.Select((row, i) => new ReadingRow
        {
            ChainId = row.Id,
            Key = "seed-" + row.Name,
            TakenAt = now.AddDays(-(i % 50)),
            CounterH = 8000 + i,
            Tool = Tool.Tape,
            Pitches = 48,
            LengthMm = 1219.2 * (1 + i % 290 / 10000.0),
            ReceivedAt = now.AddMinutes(-i),
            ToldBy = "seed",
        }).ToList();
        db.Readings.AddRange(readings);
        await db.SaveChangesAsync();
        db.Forecasts.AddRange(rows.Select((row, i) => Forecast(row, readings[i], i, now)).Where(f => f is not null)!);
        db.Notices.AddRange(rows.Where((_, i) => i % 211 == 3).Select((row, i) => new NoticeRow
        {
            ChainId = row.Id,
            Kind = (NoticeKind)(i % 5),
            Urgent = i % 4 == 0,
            Why = $"1 of 20 such chains reaches the limit before 14 Dec.",
            WhatToDo = $"Book a swap for the stop before.",
            RaisedAt = now.AddDays(-i),
        }));
        await db.SaveChangesAsync();
    }

    private static ForecastRow? Forecast(ChainRow row, ReadingRow reading, int i, DateTimeOffset now)
    {
        if (i % 37 == 36) return null;
        var early = i * 7919 % 1000 - 12;
        return new ForecastRow
        {
            ChainId = row.Id,
            MadeAt = now,
            IsLatest = true,
            LastReadingId = reading.Id,
            ModelVersion = "broad prior",
            ReadingsUsed = 9,
            HoursAtLastReading = 8000,
            HoursNow = 8100,
            ElongationPct = i % 290 / 100.0,
            ElongationSdPct = 0.05,
            RatePctPer1000H = 0.1 + i % 40 / 100.0,
            LogRateSd = 0.2,
            LimitPct = i % 7 == 0 ? 1.5 : 3,
            LimitReason = i % 7 == 0 ? LimitReason.FixedCentres : LimitReason.General,
            LimitSource = "seed",
            ProbabilityPassed = 0,
            PercentilesH = [.. Enumerable.Range(1, 99).Select(p => p * 50.0)],
            EarlyDate = now.AddDays(early),
            MiddleDate = now.AddDays(early + 60),
            LateDate = now.AddDays(early + 150),
            ShortenEarlyDate = i % 11 == 0 ? now.AddDays(i % 300 - 3) : null,
            ShortenPitches = i % 11 == 0 ? 2 : null,
            TensionFrom = i % 13 == 0 ? now.AddDays(i % 170 - 2) : null,
            Condition = early < 0 ? Condition.SwapNow : early < 60 ? Condition.PlanASwap : Condition.WithinLimit,
            NextOilingAt = now.AddDays(i % 90 - 2),
        };
    }
}
