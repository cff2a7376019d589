using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Tracking;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Browser.Tests;

/// <summary>Two lots of the same chain at the same work: those of lot B-17 wear twice as fast, and two of them ask why.</summary>
public static class SeededLots
{
    private const int ChainsOfALot = 8;

    public static async Task FillAsync(IServiceProvider services)
    {
        await using var db = await services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync();
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        var rows = Enumerable.Range(0, 2 * ChainsOfALot).Select(i => new ChainRow
        {
            Name = $"LOT-{i:00}",
            Line = "Sorting",
            ChainType = "16B-1",
            PitchMm = 25.4,
            Pitches = 120,
            FittedCounterH = 0,
            LimitPct = 3,
            LoadRel = 0.5,
            SpeedMS = 1,
            Lot = i < ChainsOfALot ? "B-17" : "A-03",
        }).ToList();
        db.Chains.AddRange(rows);
        await db.SaveChangesAsync();
        foreach (var (i, row) in rows.Index())
            SeededDesk.Tell(db, row, (row.Lot == "B-17" ? 0.4 : 0.2) * (0.9 + i % 8 * 0.03), now);
        await db.SaveChangesAsync();
        await services.GetRequiredService<ChainReview>().ReviewAsync([.. rows.Select(r => r.Id)]);
        await services.GetRequiredService<FleetModels>().TrainAsync();
        db.Notices.AddRange(rows.Take(2).Select(row => new NoticeRow
        {
            ChainId = row.Id,
            Kind = NoticeKind.RateHasRisen,
            Why = $"It wears at 0.40 % in 1,000 h, 2.0 times the 0.20 % before (probability 91 %).",
            WhatToDo = $"Look at oil and dust.",
            RaisedAt = now,
        }));
        await db.SaveChangesAsync();
    }
}
