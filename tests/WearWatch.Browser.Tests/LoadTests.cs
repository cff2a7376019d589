using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Json;
using System.Text;
using WearWatch.Browser.Tests.Floor;

namespace WearWatch.Browser.Tests;

/// <summary>
/// An hour of twenty readings a second, while fifty pages come and go: every reading is taken, and the memory that the program
/// holds stays where it was after ten minutes.
/// </summary>
/// <remarks>For <c>tests/run --long</c>; <c>WEARWATCH_LOAD_MINUTES</c> in the environment makes it longer or shorter.</remarks>
public sealed class LoadTests(Screen screen)
{
    private const int ReadingsASecond = 20;
    private const int Pages = 50;
    private const int Chains = 500;
    private const int Seed = 22;
    private const double MostGrowth = 1.10;

    private static readonly TimeSpan length = TimeSpan.FromMinutes(
        int.Parse(Environment.GetEnvironmentVariable("WEARWATCH_LOAD_MINUTES") ?? "60", CultureInfo.InvariantCulture));

    private static readonly TimeSpan settling = TimeSpan.FromMinutes(10);
    private static readonly TimeSpan lookEvery = TimeSpan.FromSeconds(10);

    /// <summary>The memory is compared by the middle of so many looks: five minutes.</summary>
    private const int LooksCompared = 30;

    private static readonly string[] paths =
        ["/chains", "/notices", "/plan", "/measuring", "/lubrication", "/data-sources", "/chains/K-007", "/chains/K-123"];

    private readonly DateTimeOffset start = TimeProvider.System.GetUtcNow();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact(Explicit = true)]
    public async Task An_hour_of_readings_and_of_pages_that_come_and_go_leaves_the_memory_as_it_was()
    {
        await using var server = new ServerProcess();
        await server.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        await RegisterAsync(client);
        using var over = CancellationTokenSource.CreateLinkedTokenSource(Ct);
        over.CancelAfter(length);
        var telling = TellAsync(client, over.Token);
        var looking = LookAsync(server, over.Token);
        var pages = await Task.WhenAll(
            Enumerable.Range(0, Pages).Select(i => ComeAndGoAsync(server.Address, new Random(Seed + i), over.Token)));
        var (told, slowest) = await telling;
        var looks = await looking;

        var before = Middle(looks.Skip((int)(settling / lookEvery)).Take(LooksCompared));
        var after = Middle(looks.TakeLast(LooksCompared));
        TestContext.Current.TestOutputHelper!.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{length.TotalMinutes} min: {told} readings, slowest answer {slowest.TotalSeconds:0.0} s, "
            + $"{pages.Sum(p => p.Seen)} pages, {pages.Sum(p => p.GivenUp)} given up; "
            + $"memory {before:0} MB after ten minutes, {after:0} MB at the end, {looks.Max():0} MB at most"));
        Assert.InRange(told, 0.9 * ReadingsASecond * length.TotalSeconds, double.MaxValue);
        Assert.Empty(pages.SelectMany(p => p.Complaints));
        Assert.InRange(after / before, 0, MostGrowth);
    }

    private async Task RegisterAsync(HttpClient client)
    {
        var text = new StringBuilder("chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h,limit_pct\n");
        for (var i = 0; i < Chains; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"K-{i:000},Line {i % 20:00},drive {i},16B-1,25.4,120,")
                .Append(CultureInfo.InvariantCulture, $"{start.AddDays(-800):yyyy-MM-dd'T'HH:mm:ss'Z'},0,3\n");
        }

        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/imports")
        {
            Content = new MultipartFormDataContent { { new StringContent(text.ToString()), "files", "chains.csv" } },
        };
        request.Headers.Add("Idempotency-Key", "register");
        (await client.SendAsync(request, Ct)).EnsureSuccessStatusCode();
    }

    /// <summary>
    /// Gauges that each tell one reading a second of the last two years, chain after chain, and wait for the answer.
    /// </summary>
    private async Task<(int Told, TimeSpan Slowest)> TellAsync(HttpClient client, CancellationToken over)
    {
        var (told, slowest, next, chance) = (0, TimeSpan.Zero, 0, new Random(Seed));
        await Task.WhenAll(Enumerable.Range(0, ReadingsASecond).Select(async _ =>
        {
            using var beat = new PeriodicTimer(TimeSpan.FromSeconds(1));
            while (!over.IsCancellationRequested)
            {
                await beat.WaitForNextTickAsync(Ct);
                await TellOneAsync(Interlocked.Increment(ref next) - 1, chance.NextDouble());
            }
        }));
        return (told, slowest);

        async Task TellOneAsync(int number, double noise)
        {
            var (chain, visit) = (number % Chains, number / Chains);
            var percent = 0.2 + 0.012 * visit + 0.02 * noise;
            using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/readings")
            {
                Content = JsonContent.Create(new Dictionary<string, object>
                {
                    ["chain"] = $"K-{chain:000}",
                    ["taken_at"] = start.AddDays(5 * visit - 780),
                    ["counter_h"] = 80 * (visit + 1),
                    ["tool"] = "tape",
                    ["pitches"] = 48,
                    ["length"] = (48 * 25.4 * (1 + percent / 100)).ToString("0.0", CultureInfo.InvariantCulture),
                    ["unit"] = "mm",
                }),
            };
            request.Headers.Add("Idempotency-Key", $"load {number}");
            var began = Stopwatch.GetTimestamp();
            using var answer = await client.SendAsync(request, Ct);
            answer.EnsureSuccessStatusCode();
            var took = Stopwatch.GetElapsedTime(began);
            if (took > slowest) slowest = took;
            Interlocked.Increment(ref told);
        }
    }

    private static async Task<IReadOnlyList<double>> LookAsync(ServerProcess server, CancellationToken over)
    {
        List<double> looks = [];
        while (!over.IsCancellationRequested)
        {
            looks.Add(server.ResidentMb);
            await Task.Delay(lookEvery, Ct);
        }

        return looks;
    }

    /// <summary>
    /// A person's browser: opens a page, stays one to three minutes, leaves, and opens the next. A page that does not come within
    /// two minutes is given up.
    /// </summary>
    private async Task<(int Seen, int GivenUp, IReadOnlyList<string> Complaints)> ComeAndGoAsync(
        string address, Random chance, CancellationToken over)
    {
        var (seen, givenUp) = (0, 0);
        await using var visit = await screen.AtDeskAsync(address: address);
        await Task.Delay(TimeSpan.FromSeconds(120 * chance.NextDouble()), Ct);
        while (!over.IsCancellationRequested)
        {
            try
            {
                await visit.GoAsync(paths[chance.Next(paths.Length)]);
                seen++;
                await Task.WhenAny(Task.Delay(TimeSpan.FromSeconds(60 + 120 * chance.NextDouble()), Ct), Task.Delay(-1, over));
                await visit.Page.GotoAsync("about:blank");
            }
            catch (TimeoutException)
            {
                givenUp++;
            }
        }

        return (seen, givenUp, visit.Complaints);
    }

    private static double Middle(IEnumerable<double> looks)
    {
        var inOrder = looks.Order().ToList();
        return inOrder[inOrder.Count / 2];
    }
}
