using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>The small mill with a hoist: D-1 holds a load and has a hard date. Its line stops on days 5, 19, 33, ...</summary>
internal static class HoistMill
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>The mill; without a day the forecast tells no date.</summary>
    public static async Task<PlannedMill> OpenAsync(int? dueInDays)
    {
        var mill = await PlannedMill.OpenAsync();
        await using var db = mill.Db();
        db.Chains.Single(c => c.Name == "D-1").Lifts = true;
        await db.SaveChangesAsync(Ct);
        if (dueInDays is { } days) await DateAsync(mill, "D-1", days);
        return mill;
    }

    public static Task DateAsync(PlannedMill mill, string chain, int dueInDays) =>
        ForecastAsync(mill, chain, medianH: 500, mill.Now.AddDays(dueInDays));

    /// <summary>A newer forecast of a chain.</summary>
    public static async Task ForecastAsync(PlannedMill mill, string chain, double medianH, DateTimeOffset? outOfUseBy)
    {
        await using var db = mill.Db();
        var id = db.Chains.Single(c => c.Name == chain).Id;
        foreach (var old in db.Forecasts.Where(f => f.ChainId == id)) old.IsLatest = false;
        await db.SaveChangesAsync(Ct);
        db.Forecasts.Add(MillRows.Forecast(id, medianH, mill.Now, outOfUseBy));
        await db.SaveChangesAsync(Ct);
    }

    public static string WindowOf(PlanDraft draft, int index) =>
        draft.Picture.Input.Windows.Where(w => w.Line == "Debarking").OrderBy(w => w.Start).ElementAt(index).Id;

    public static int PlaceIn(PlanDraft draft, string chain) => draft.Picture.Input.Windows.Where(w => w.Line == "Debarking")
        .OrderBy(w => w.Start).Select(w => w.Id).ToList()
        .IndexOf(draft.Plan.Placements.Single(p => p.Chain == chain).Window?.Id ?? "");
}
