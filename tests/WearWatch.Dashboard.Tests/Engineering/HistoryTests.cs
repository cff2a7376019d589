using System.Net;
using System.Text.Json;
using ParquetSharp;
using WearWatch.Chains.Families;
using WearWatch.Dashboard.Engineer.History;
using WearWatch.Inspections;
using WearWatch.Plant.Intake;

namespace WearWatch.Dashboard.Tests.Engineering;

/// <summary>The open data door on the small plant: four readings, an oiling, two chains.</summary>
public sealed class HistoryTests(SmallPlantHost plant) : IClassFixture<SmallPlantHost>
{
    private readonly DashboardHost host = plant.Host;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_table_comes_as_csv_with_the_columns_that_it_tells_of()
    {
        foreach (var table in host.Get<HistoryTables>().All)
        {
            var text = await host.CreateClient().GetStringAsync($"/engineering/history/{table.Name}.csv", Ct);
            Assert.Equal(string.Join(',', table.Columns.Select(c => c.Name)), text.Split("\r\n")[0]);
        }
    }

    // Oracle: ParquetSharp, the Apache reader in C++, which shares no code with the writer.
    [Fact]
    public async Task Readings_come_as_parquet_that_another_reader_understands()
    {
        var file = await host.CreateClient().GetByteArrayAsync("/engineering/history/readings.parquet", Ct);
        using var reader = new ParquetFileReader(new MemoryStream(file));
        Assert.Equal(4, reader.FileMetaData.NumRows);
        var columns = host.Get<HistoryTables>().Of("readings")!.Columns;
        Assert.Equal(columns.Select(c => c.Name), Enumerable.Range(0, reader.FileMetaData.NumColumns)
            .Select(i => reader.FileMetaData.Schema.Column(i).Name));
        using var group = reader.RowGroup(0);
        Assert.Equal(["K-1", "K-1", "K-1", "K-1"], Column<string>(group, columns, "chain"));
        Assert.Equal([1222.8, 1224.6, 1227, 1229.5], Column<double?>(group, columns, "length_mm"));
        Assert.Equal(new DateTime(2025, 12, 22), Column<DateTime?>(group, columns, "taken_at")[0]);
        Assert.Equal([false, false, false, false], Column<bool?>(group, columns, "withdraws"));
        Assert.All(Column<long?>(group, columns, "corrects_id"), Assert.Null);
    }

    [Fact]
    public async Task Every_table_comes_as_parquet_with_as_many_rows_as_csv()
    {
        foreach (var table in host.Get<HistoryTables>().All)
        {
            var file = await host.CreateClient().GetByteArrayAsync($"/engineering/history/{table.Name}.parquet", Ct);
            using var reader = new ParquetFileReader(new MemoryStream(file));
            var lines = (await host.CreateClient().GetStringAsync($"/engineering/history/{table.Name}.csv", Ct))
                .Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length;
            Assert.Equal(lines - 1, reader.FileMetaData.NumRows);
        }
    }

    [Fact]
    public async Task A_look_stands_there_with_what_was_found()
    {
        await host.Get<InspectionDesk>().TakeAsync(
            new NewInspection("look", "K-1", A.Now, null,
                [new Finding(InspectionPoint.Sag, true, "hangs low"), new Finding(InspectionPoint.Corrosion, false)], "ann"), Ct);
        var rows = (await host.CreateClient().GetStringAsync("/engineering/history/inspections.csv", Ct))
            .Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, rows.Length);
        Assert.Contains(",K-1,", rows[1], StringComparison.Ordinal);
        Assert.Contains(",2,sag,hangs low,ann,", rows[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_api_gives_page_after_page_and_names_the_next_one()
    {
        var client = host.CreateClient();
        var lengths = new List<double>();
        for (var path = "/api/v1/history/readings?limit=3"; path.Length > 0;)
        {
            var answer = await client.GetAsync(path, Ct);
            using var page = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(Ct));
            lengths.AddRange(
                page.RootElement.GetProperty("rows").EnumerateArray().Select(r => r.GetProperty("length_mm").GetDouble()));
            path = answer.Headers.TryGetValues("Link", out var links) ? links.Single().Split('<', '>')[1] : "";
        }

        Assert.Equal([1222.8, 1224.6, 1227, 1229.5], lengths);
    }

    [Theory]
    [InlineData("nothing", HttpStatusCode.NotFound)]
    [InlineData("readings?limit=0", HttpStatusCode.UnprocessableEntity)]
    [InlineData("readings?after=-1", HttpStatusCode.UnprocessableEntity)]
    public async Task A_question_that_cannot_be_answered_is_told_what_is_wrong(string asked, HttpStatusCode status) =>
        Assert.Equal(status, (await host.CreateClient().GetAsync("/api/v1/history/" + asked, Ct)).StatusCode);

    [Fact]
    public async Task The_list_of_chains_names_its_next_page()
    {
        var answer = await host.CreateClient().GetAsync("/api/v1/chains?take=1&line=Press", Ct);
        Assert.Equal("</api/v1/chains?take=1&line=Press&skip=1>; rel=\"next\"", Assert.Single(answer.Headers.GetValues("Link")));
        Assert.False((await host.CreateClient().GetAsync("/api/v1/chains?take=1&skip=1", Ct)).Headers.Contains("Link"));
    }

    private static T[] Column<T>(RowGroupReader group, IReadOnlyList<HistoryColumn> columns, string name)
    {
        using var column = group.Column(columns.ToList().FindIndex(c => c.Name == name)).LogicalReader<T>();
        return column.ReadAll((int)group.MetaData.NumRows);
    }
}
