using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Chains.Families;
using WearWatch.Plant.Tracking;
using WearWatch.Signals;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;
using WearWatch.Worker.Demo;

namespace WearWatch.Browser.Tests;

/// <summary>
/// A dashboard of its own with the demo mill and three rows more for each list that the mill leaves empty, started when the first
/// test asks for it.
/// </summary>
public sealed class SortedMill : IAsyncDisposable
{
    private readonly Lazy<Task<string>> opened;

    public SortedMill() => opened = new(StartAsync);

    /// <summary>A chain with readings, forecasts and telemetry.</summary>
    public string Chain { get; private set; } = "";

    private DashboardHost Host { get; } = new() { StandsStill = true };

    /// <summary>Its address, once all rows are there.</summary>
    public Task<string> OpenAsync() => opened.Value;

    public ValueTask DisposeAsync() => Host.DisposeAsync();

    private async Task<string> StartAsync()
    {
        var address = Host.Listen();
        var services = Host.Services;
        await services.GetRequiredService<DemoPlant>().LoadAsync();
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        await using var db = await services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync();
        db.Chains.AddRange(Enumerable.Range(0, 2).Select(i => new ChainRow
        {
            Name = $"OWN-{i}",
            Line = "Packing",
            ChainType = $"PLANT-{i}",
            Family = ChainFamily.Named("conveyor"),
            PitchMm = 40 + 23 * i,
        }));
        await db.SaveChangesAsync();
        await services.GetRequiredService<ChainReview>().ReviewAsync(await db.Chains.Select(c => c.Id).ToArrayAsync());
        await services.GetRequiredService<FleetModels>().TrainAsync();
        var chains = await db.Readings.Select(r => r.ChainId).Distinct().Join(db.Chains, id => id, c => c.Id, (_, c) => c)
            .Where(c => c.Pitches > 0).OrderBy(c => c.Id).Take(3).ToListAsync();
        Chain = chains[0].Name;
        foreach (var i in Enumerable.Range(0, chains.Count)) Plan(db, chains, i, now);
        for (var day = 0; day < 3; day++) Send(db, chains, day, now.AddDays(-day - 1));
        await KeepForecastsAsync(db, chains[0].Id);
        await SeededSignals.AddAsync(db, now);
        await SortedWebhooks.AddAsync(db, now);
        await db.SaveChangesAsync();
        await SortedWorkOrders.AddAsync(db, now);
        return address;
    }

    /// <summary>What a planner has decided, ordered and had done.</summary>
    private static void Plan(WearDb db, List<ChainRow> chains, int i, DateTimeOffset now)
    {
        var chain = chains[i];
        var planned = new SwapRow
        {
            ChainId = chain.Id,
            WindowId = $"stop {i}",
            Start = now.AddDays(-10 - i),
            End = now.AddDays(-10 - i).AddHours(8),
            DecidedBy = $"Planner {i}",
            DecidedAt = now.AddDays(-20 + i),
            Note = $"note {2 - i}",
            Outcome = i == 2 ? SwapEnd.NotDone : SwapEnd.Done,
            OutcomeNote = i == 2 ? "no crane" : "",
            PlannedHours = 4 - i,
            HoursWorked = 3 + i,
        };
        db.Swaps.Add(planned);
        db.SwapTerms.Add(new SwapTermsRow
        {
            ChainId = chain.Id,
            Hours = 3 - i,
            People = 2 + i,
            ParallelGroup = $"pair {i}",
            WithSprockets = i == 1,
        });
        db.Purchases.Add(new PurchaseRow
        {
            Kind = "Chain",
            Designation = $"{16 + 4 * i}B-1",
            Quantity = 160 - 10 * i,
            Supplier = $"Supplier {i}",
            Price = 30 + i,
            State = (PurchaseState)(i % 2),
            ExpectedOn = DateOnly.FromDateTime(now.UtcDateTime).AddDays(5 + i),
        });
        db.PlanVersions.Add(new PlanVersionRow
        {
            Name = $"version {i}",
            SavedBy = $"Planner {2 - i}",
            SavedAt = now.AddDays(-i),
            Cost = 1000 * (i + 1),
            Swaps = [.. chains.Select((c, n) => new VersionSwap(c.Name, null, now.AddDays(30 + i + n), SwapPlacing.ByHand, 4))],
            ApprovedBy = i == 0 ? "Planner 0" : "",
            ApprovedAt = i == 0 ? now : null,
        });
        db.Notices.Add(new NoticeRow
        {
            ChainId = chain.Id,
            Kind = NoticeKind.RateHasRisen,
            Why = $"It wears at 0.52 % in 1,000 h, 2.3 times the 0.23 % before (probability 84 %).",
            WhatToDo = $"Look at oil and dust.",
            RaisedAt = now.AddDays(-9 * i),
        });
        db.SecurityEvents.AddRange(Enumerable.Range(0, 3).Select(n => new SecurityEventRow
        {
            At = now.AddHours(-i - 3 * n),
            Kind = (SecurityEventKind)i,
            Who = $"Person {2 - i}",
            About = $"about {i + 3 * n}",
            Address = $"10.0.{n}.{9 - i}",
        }));
    }

    /// <summary>What sensors have sent of a day.</summary>
    private static void Send(WearDb db, List<ChainRow> chains, int day, DateTimeOffset at)
    {
        var start = new DateTimeOffset(at.UtcDateTime.Date, TimeSpan.Zero);
        db.RunDays.Add(new RunDayRow
        {
            ChainId = chains[0].Id,
            Day = start,
            From = start,
            To = start.AddHours(24),
            Hours = 20 - 3 * day,
            GapHours = day,
            Source = (TelemetryKind)day,
        });
        db.PassDays.Add(new PassDayRow
        {
            ChainId = chains[0].Id,
            Day = start,
            LastAt = start.AddHours(20),
            ElongationPct = 1 + 0.1 * day,
            UncertaintyPct = 0.02,
            Passes = 900 + day,
            Missed = 5 - day,
            Doubled = day,
        });
        db.TelemetryHours.Add(new TelemetryHourRow
        {
            ChainId = chains[day].Id,
            Kind = (TelemetryKind)day,
            Hour = start.AddHours(25 - day),
            Count = 100 + day,
        });
    }

    /// <summary>Two forecasts of a chain as they were kept before the newest one.</summary>
    private static async Task KeepForecastsAsync(WearDb db, int chainId)
    {
        var newest = await db.Forecasts.AsNoTracking().SingleAsync(f => f.ChainId == chainId && f.IsLatest);
        db.Forecasts.AddRange(Enumerable.Range(1, 2).Select(i => new ForecastRow
        {
            ChainId = chainId,
            MadeAt = newest.MadeAt.AddDays(-30 * i),
            ModelVersion = $"fleet model {i}",
            ReadingsUsed = newest.ReadingsUsed - i,
            HoursAtLastReading = newest.HoursAtLastReading - 500 * i,
            HoursNow = newest.HoursNow - 500 * i,
            ElongationPct = newest.ElongationPct - 0.1 * i,
            RatePctPer1000H = newest.RatePctPer1000H,
            LogRateSd = newest.LogRateSd,
            LimitPct = newest.LimitPct,
            LimitReason = newest.LimitReason,
            LimitSource = newest.LimitSource,
            PercentilesH = newest.PercentilesH,
            EarlyDate = newest.EarlyDate?.AddDays(40 * i),
            MiddleDate = newest.MiddleDate,
            LateDate = newest.LateDate,
            Condition = newest.Condition,
        }));
    }
}
