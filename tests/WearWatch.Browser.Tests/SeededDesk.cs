using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Browser.Tests;

/// <summary>
/// Chains with a history, for the engineer's desk: two lives each, told by readings, with a fleet model and an alarm.
/// </summary>
public static class SeededDesk
{
    private const int Chains = 60;

    /// <summary>Tests of several classes ask for them at once: the first one fills, the others wait until all is there.</summary>
    private static readonly SemaphoreSlim one = new(1, 1);

    public static async Task FillAsync(IServiceProvider services)
    {
        await one.WaitAsync(TestContext.Current.CancellationToken);
        try
        {
            await FillOnceAsync(services);
        }
        finally
        {
            one.Release();
        }
    }

    private static async Task FillOnceAsync(IServiceProvider services)
    {
        await using var db = await services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync();
        if (await db.Chains.AnyAsync(c => c.Name == "DESK-00")) return; // another test has a chain DESK-LINKS
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        var rows = Enumerable.Range(0, Chains).Select(Chain).ToList();
        db.Chains.AddRange(rows);
        await db.SaveChangesAsync();
        var chance = new Random(5);
        foreach (var row in rows)
            Tell(db, row, 0.1 * (1 + (int)row.Lubrication!) * row.LoadRel!.Value / 0.5 * (0.7 + 0.6 * chance.NextDouble()), now);
        db.Notices.Add(new NoticeRow
        {
            ChainId = rows[3].Id,
            Kind = NoticeKind.RateHasRisen,
            Why = $"It wears at 0.52 % in 1,000 h, 2.3 times the 0.23 % before (probability 84 %).",
            WhatToDo = $"Look at oil and dust.",
            RaisedAt = now.AddDays(-9),
        });
        await db.SaveChangesAsync();
        await services.GetRequiredService<ChainReview>().ReviewAsync([.. rows.Select(r => r.Id)]);
        await services.GetRequiredService<FleetModels>().TrainAsync();
    }

    private static ChainRow Chain(int i) => new()
    {
        Name = $"DESK-{i:00}",
        Line = i % 2 == 0 ? "Drying" : "Press",
        ChainType = i % 3 == 0 ? "20B-1" : "16B-1",
        PitchMm = i % 3 == 0 ? 31.75 : 25.4,
        Pitches = 120,
        FittedCounterH = 0,
        LimitPct = 3,
        LoadRel = 0.3 + i % 7 * 0.1,
        SpeedMS = 0.5 + i % 5 * 0.5,
        Lubrication = (LubricationState)(i % 3),
        Dust = (DustLevel)(i % 2),
    };

    /// <summary>A reading every 1,500 h until past 3.3 %, then a new chain that runs half as far.</summary>
    internal static void Tell(WearDb db, ChainRow row, double ratePct, DateTimeOffset now)
    {
        var first = 3.4 / ratePct * 1000;
        var last = first * 1.5;
        for (var h = 0.0; h <= last; h += last / 18)
        {
            var percent = 0.1 + (h <= first ? h : h - first) * ratePct / 1000;
            db.Readings.Add(new ReadingRow
            {
                ChainId = row.Id,
                Key = $"desk-{row.Name}-{h:0}",
                TakenAt = now.AddHours(h - last),
                CounterH = Math.Round(h),
                Tool = Tool.Tape,
                Pitches = 100,
                LengthMm = 100 * row.PitchMm * (1 + percent / 100),
                ReceivedAt = now.AddHours(h - last),
                ToldBy = "seed",
            });
        }

        db.Events.Add(new EventRow
        {
            ChainId = row.Id,
            Key = $"desk-{row.Name}",
            Kind = ChainEventKind.Replacement,
            At = now.AddHours(first - last),
            CounterBeforeH = Math.Round(first),
            CounterAfterH = Math.Round(first),
            Lot = row.Lot,
            ReceivedAt = now.AddHours(first - last),
            ToldBy = "seed",
        });
    }
}
