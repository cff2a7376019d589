using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>
/// The newest length of a chain in a file is asked about as an entry by a person is; the others are weighed later.
/// </summary>
public sealed class LengthInFileTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_newest_length_that_does_not_fit_waits_and_moves_nothing_until_it_is_confirmed()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await FollowedAsync(plant);
        var before = await EarlyAsync(plant, id);
        var report = await plant.Import.ImportAsync([A.Readings(A.Row("C1", 4_500, 3.1))], null, Ct);

        Assert.Equal((0, 1, 0), (report.Taken, report.Waiting, report.Refused));
        Assert.Contains("does not fit", Assert.Single(report.Files[0].Remarks).Reason.ToString(), StringComparison.Ordinal);
        Assert.Equal(before, await EarlyAsync(plant, id));

        await using var db = plant.Db();
        var waiting = await db.Readings.SingleAsync(r => r.Standing == ReadingStanding.Waiting, Ct);
        await plant.Desk.ConfirmAsync(waiting.Id, "Ina", isPlanner: true, Ct);
        Assert.NotEqual(before, await EarlyAsync(plant, id));
    }

    [Fact]
    public async Task Two_such_in_a_row_both_wait_and_the_one_before_them_is_the_newest_that_counts()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await FollowedAsync(plant);
        var before = await EarlyAsync(plant, id);
        var report = await plant.Import.ImportAsync([A.Readings(A.Row("C1", 4_500, 3.1), A.Row("C1", 4_600, 9.4))], null, Ct);

        Assert.Equal((0, 2, 0), (report.Taken, report.Waiting, report.Refused));
        Assert.Equal([2, 3], report.Files[0].Remarks.Select(r => r.Line));
        Assert.Equal(before, await EarlyAsync(plant, id));
    }

    [Fact]
    public async Task What_later_rows_of_the_file_bear_out_is_taken_and_the_preview_counts_as_the_import_does()
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        var file = A.Readings(A.Row("C1", 4_500, 0.55), A.Row("C1", 4_600, 3.1), A.Row("C1", 5_000, 0.61), A.Row("C1", 5_500,
            0.67));
        var preview = await plant.Import.PreviewAsync([file], null, Ct);
        var report = await plant.Import.ImportAsync([file], null, Ct);

        Assert.Equal((4, 0, 0), (report.Taken, report.Waiting, report.Refused));
        Assert.Equal((report.Taken, report.Waiting), (preview.Taken, preview.Waiting));
        var again = await plant.Import.ImportAsync([file], null, Ct);
        Assert.Equal((0, 4), (again.Taken, again.AlreadyKnown));
    }

    /// <summary>A chain that wears 0.12 % per 1,000 h and has been followed for 4,000 h.</summary>
    private static async Task<int> FollowedAsync(TestPlant plant)
    {
        var id = await plant.AddChainAsync();
        var report = await plant.Import.ImportAsync(
            [A.Readings([.. Enumerable.Range(0, 9).Select(i => A.Row("C1", 500 * i, 0.06 * i))])], null, Ct);
        Assert.Equal(9, report.Taken);
        return id;
    }

    private static async Task<DateTimeOffset?> EarlyAsync(TestPlant plant, int chain)
    {
        await using var db = plant.Db();
        return (await db.Forecasts.AsNoTracking().SingleAsync(f => f.ChainId == chain && f.IsLatest, Ct)).EarlyDate;
    }
}
