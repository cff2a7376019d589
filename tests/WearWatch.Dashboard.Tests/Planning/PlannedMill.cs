using Microsoft.Extensions.DependencyInjection;
using WearWatch.Chains;
using WearWatch.Dashboard.Planner;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Windows;
using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Planning;

/// <summary>A small mill with four chains on two lines and a shutdown of both every fortnight.</summary>
public sealed class PlannedMill : IAsyncDisposable
{
    private static readonly string[] Lines = ["Debarking", "Press"];

    public DashboardHost Host { get; } = new();

    public DateTimeOffset Now { get; private set; }

    public static async Task<PlannedMill> OpenAsync()
    {
        var mill = new PlannedMill();
        mill.Now = mill.Host.Services.GetRequiredService<TimeProvider>().GetUtcNow();
        await using var db = await mill.Host.OpenAsync();
        ChainRow[] chains = [Chain("D-1", "Debarking", 80), Chain("D-2", "Debarking", 81), Chain("P-1", "Press", 100),
            Chain("P-2", "Press", 100)];
        db.Chains.AddRange(chains);
        await db.SaveChangesAsync();
        double[] medians = [500, 900, 1500, 1600];
        db.Forecasts.AddRange(chains.Select((c, i) => Forecast(c.Id, medians[i], mill.Now)));
        db.Spares.Add(
            new SpareRow { Kind = "Chain", Designation = "16B-1", InStock = 160, LeadDays = 28, PackSize = 160, Price = 3 });
        await db.SaveChangesAsync();
        var first = DateTime.SpecifyKind(mill.Now.UtcDateTime.Date.AddDays(5).AddHours(6), DateTimeKind.Unspecified);
        await mill.Get<PlanInputs>().AddAsync([.. Lines.Select(line => new WindowRule
        {
            Id = line, Line = line, FirstStart = first, Length = TimeSpan.FromHours(8), Recurrence = "FREQ=WEEKLY;INTERVAL=2",
            Crew = "fitters", CrewHours = 16,
        })], TestContext.Current.CancellationToken);
        return mill;
    }

    public T Get<T>()
        where T : notnull => Host.Get<T>();

    public async Task<PlanDraft> DraftAsync() => new(await Get<PlanQuery>().AskAsync(TestContext.Current.CancellationToken));

    public async Task<PlanDraft> ProposedAsync()
    {
        var draft = await DraftAsync();
        draft.Take(await SwapPlanner.ProposeAsync(
            draft.ToPropose(), PlannerEffort.Usual, null, TestContext.Current.CancellationToken));
        return draft;
    }

    public Task<int> KeepAsync(PlanDraft draft) =>
        Get<PlanKeeping>().KeepAsync(draft, "planner", TestContext.Current.CancellationToken);

    public async Task<List<SwapRow>> SwapsAsync()
    {
        await using var db = await Host.OpenAsync();
        return [.. db.Swaps.OrderBy(s => s.Id)];
    }

    public ValueTask DisposeAsync() => Host.DisposeAsync();

    private static ChainRow Chain(string name, string line, int pitches) =>
        new()
        {
            Name = name,
            Line = line,
            Position = "drive",
            ChainType = "16B-1",
            PitchMm = 25.4,
            Pitches = pitches,
            SprocketTeeth = [17, 57],
        };

    private static ForecastRow Forecast(int chainId, double medianH, DateTimeOffset now) => new()
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
    };
}
