using System.Globalization;
using System.Net;
using System.Text;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Rounds;

namespace WearWatch.Dashboard.Tests.Floor;

/// <summary>What the phone's pack weighs on its way, and that it goes only when there is something new.</summary>
public sealed class PackWeightTests : IAsyncLifetime
{
    private readonly DashboardHost host = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => default;

    public ValueTask DisposeAsync() => host.DisposeAsync();

    [Fact]
    public async Task A_pack_that_the_phone_has_is_not_sent_again_until_something_changed()
    {
        using var client = host.CreateClient();
        await host.Get<FileImport>().ImportAsync(SmallPlant.Files, null, Ct);
        var (first, tag) = await AskAsync(null);
        Assert.Equal(HttpStatusCode.OK, first);
        var (same, still) = await AskAsync(tag);
        Assert.Equal((HttpStatusCode.NotModified, tag), (same, still));
        await host.Get<RoundDesk>().HandAsync(
            "taken", "Press", DateOnly.FromDateTime(TimeProvider.System.GetUtcNow().UtcDateTime), "Ina", false, Ct);
        var (changed, other) = await AskAsync(tag);
        Assert.Equal(HttpStatusCode.OK, changed);
        Assert.NotEqual(tag, other);

        async Task<(HttpStatusCode Status, string Tag)> AskAsync(string? has)
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, "/api/v1/floor/pack");
            if (has is not null) request.Headers.TryAddWithoutValidation("If-None-Match", has);
            using var answer = await client.SendAsync(request, Ct);
            if (answer.StatusCode == HttpStatusCode.NotModified) Assert.Empty(await answer.Content.ReadAsByteArrayAsync(Ct));
            return (answer.StatusCode, answer.Headers.ETag!.ToString());
        }
    }

    /// <summary>The phone's signal is weak: what a line of 100 chains weighs on its way is bounded.</summary>
    [Fact]
    public async Task A_line_of_a_hundred_chains_fits_in_15_kB()
    {
        using var client = host.CreateClient();
        var chains = new StringBuilder("chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h,limit_pct\n");
        var readings = new StringBuilder("chain,taken_at,counter_h,tool,pitches,length,unit,temperature_c\n");
        var random = new Random(7);
        for (var i = 0; i < 100; i++)
        {
            chains.Append(CultureInfo.InvariantCulture, $"LINE-{i},Stacker,drive {i},16B-1,25.4,{100 + random.Next(60)},");
            chains.Append("2025-12-01T00:00:00Z,0,3\n");
            for (var visit = 1; visit <= 3; visit++)
            {
                var length = 48 * 25.4 * (1 + 0.002 * visit * (0.5 + random.NextDouble()));
                readings.Append(CultureInfo.InvariantCulture, $"LINE-{i},2026-0{2 * visit}-1{random.Next(9)}T08:00:00Z,");
                readings.Append(CultureInfo.InvariantCulture, $"{visit * 900 + random.Next(300)},tape,48,{length:0.0},mm,20\n");
            }
        }

        await host.Get<FileImport>().ImportAsync([File("chains.csv", chains), File("readings.csv", readings)], null, Ct);
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/v1/floor/pack");
        request.Headers.AcceptEncoding.ParseAdd("br");
        using var answer = await client.SendAsync(request, Ct);
        var bytes = (await answer.Content.ReadAsByteArrayAsync(Ct)).Length;
        TestContext.Current.TestOutputHelper!.WriteLine($"{bytes:#,0} bytes");
        Assert.InRange(bytes, 1_000, 15_000);
    }

    private static ImportFile File(string name, StringBuilder text) =>
        new(name, () => new MemoryStream(Encoding.UTF8.GetBytes(text.ToString()))) { By = "Ina" };
}
