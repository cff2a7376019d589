using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Intake;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>
/// The lengths in a file are asked about: the newest of a chain as an entry by a person is, those before it by what came before
/// and after them.
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
    public async Task An_older_row_that_those_before_and_after_belie_waits_and_the_preview_counts_as_the_import_does()
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        var file = A.Readings(
            A.Row("C1", 4_500, 0.55), A.Row("C1", 4_600, 3.1), A.Row("C1", 5_000, 0.61), A.Row("C1", 5_500, 0.67));
        var preview = await plant.Import.PreviewAsync([file], null, Ct);
        var report = await plant.Import.ImportAsync([file], null, Ct);

        Assert.Equal((3, 1, 0), (report.Taken, report.Waiting, report.Refused));
        var remark = Assert.Single(report.Files[0].Remarks);
        Assert.Equal((3, "length", RemarkKind.Waiting), (remark.Line, remark.Column, remark.Kind));
        Assert.Equal((report.Taken, report.Waiting), (preview.Taken, preview.Waiting));
        var again = await plant.Import.ImportAsync([file], null, Ct);
        Assert.Equal((0, 4), (again.Taken, again.AlreadyKnown));
    }

    [Fact]
    public async Task Its_question_names_the_slip_and_who_answers_it_is_offered_the_correction()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await FollowedAsync(plant);
        var slipped = Row(4_600, 39, 0.56);
        var report = await plant.Import.ImportAsync(
            [A.Readings(A.Row("C1", 4_500, 0.55), slipped, A.Row("C1", 5_000, 0.61), A.Row("C1", 5_500, 0.67))], null, Ct);

        Assert.Contains("over 40 pitches instead of 39", Assert.Single(report.Files[0].Remarks).Reason.ToString(),
            StringComparison.Ordinal);
        await using var db = plant.Db();
        var waiting = await db.Readings.SingleAsync(r => r.Standing == ReadingStanding.Waiting, Ct);
        var doubt = await plant.Get<EntryQuestion>().AskAsync(id, waiting.ToReading("C1"), waiting.Id, Ct);
        Assert.Equal(40, doubt!.Chosen!.Pitches);

        Assert.IsType<IntakeAnswer.Taken>(
            await plant.Desk.CorrectAsync(waiting.Id, A.Reading(counterH: 4_600, percent: 0.56), Ct));
        var standing = await db.StandingReadingsAsync(id, Ct);
        Assert.Equal([4_500, 4_600, 5_000, 5_500], standing.Skip(9).Select(r => r.CounterH!.Value));
    }

    [Theory]
    [InlineData(1.2, 1.32, 1.45, 1.6)] // it wears faster
    [InlineData(0.02, 0.08, 0.14, 0.2)] // replaced and nobody recorded it
    public async Task What_later_rows_bear_out_is_taken(params double[] percents)
    {
        await using var plant = await TestPlant.OpenAsync();
        await FollowedAsync(plant);
        string[] rows = [.. percents.Select((percent, i) => A.Row("C1", 4_500 + 500 * i, percent))];
        var report = await plant.Import.PreviewAsync([A.Readings(rows)], null, Ct);

        Assert.DoesNotContain(report.Files[0].Remarks, r => r.Line < 5);
    }

    [Fact]
    public async Task Two_slips_beside_each_other_both_wait_and_a_first_import_in_any_order_of_its_rows_tells_the_same()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync("C1");
        await plant.AddChainAsync("C2");
        List<string> rows = [.. Enumerable.Range(0, 12).Select(i => A.Row("C1", 500 * i, 0.06 * i).Replace(
            "C1,,", $"C1,{TestPlant.Start.AddDays(25 * i - 400):yyyy-MM-dd},", StringComparison.Ordinal))];
        rows[6] = rows[6].Replace(",40,", ",39,", StringComparison.Ordinal);
        rows[7] = rows[7].Replace(",40,", ",42,", StringComparison.Ordinal);
        string[] others = [.. rows.Select((_, i) => A.Row("C2", 500 * i, 0.1 * i))];
        string[][] orders =
        [
            [.. rows], [.. others, .. rows], [.. rows.Zip(others, (a, b) => (string[])[a, b]).SelectMany(r => r)],
            [.. rows.AsEnumerable().Reverse()],
        ];
        foreach (var order in orders)
        {
            var report = await plant.Import.PreviewAsync([A.Readings(order)], null, Ct);
            Assert.Equal([rows[6], rows[7]], report.Files[0].Remarks.Select(r => order[r.Line - 2]).OrderBy(rows.IndexOf));
        }
    }

    private static string Row(double counterH, int pitches, double percent) =>
        A.Row("C1", counterH, percent).Replace(",40,", $",{pitches},", StringComparison.Ordinal);

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
