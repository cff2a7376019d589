using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>What a browser that was never here fetches before the plant stands on its screen.</summary>
public sealed class FirstVisitTests(Screen screen)
{
    private const int MostRequests = 12;
    private const int MostBytes = 350_000;

    [Fact]
    public async Task A_first_visit_to_the_glance_fetches_little_in_few_requests()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        await using var desk = await screen.AtDeskAsync();
        var finished = new ConcurrentBag<IRequest>();
        desk.Page.RequestFinished += (_, request) => finished.Add(request);
        await desk.GoAsync("/");
        await desk.Page.Locator(".weeks").First.WaitForAsync();
        var bytes = new Dictionary<string, int>();
        foreach (var request in finished)
        {
            var sizes = await request.SizesAsync();
            bytes[$"{bytes.Count + 1}. {new Uri(request.Url).AbsolutePath}"] = sizes.ResponseHeadersSize + sizes.ResponseBodySize;
        }

        var list = string.Join('\n', bytes.Select(b => $"{b.Key}: {b.Value:#,0}"));
        TestContext.Current.TestOutputHelper!.WriteLine(list);
        Assert.True(bytes.Count is > 5 and <= MostRequests, list);
        Assert.True(bytes.Values.Sum() <= MostBytes, list);
        Assert.Empty(desk.Complaints);
    }

    [Fact]
    public async Task What_a_phone_takes_along_comes_packed_small()
    {
        await SeededDesk.FillAsync(screen.Host.Services);
        using var plain = new HttpClient { BaseAddress = new Uri(screen.Address) };
        var whole = await plain.GetByteArrayAsync("/api/v1/floor/pack", TestContext.Current.CancellationToken);
        using var asked = new HttpRequestMessage(HttpMethod.Get, "/api/v1/floor/pack");
        asked.Headers.AcceptEncoding.ParseAdd("br");
        using var answer = await plain.SendAsync(asked, TestContext.Current.CancellationToken);
        var small = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        Assert.Equal(["br"], answer.Content.Headers.ContentEncoding);
        Assert.True(small.Length * 4 < whole.Length, $"{small.Length:#,0} of {whole.Length:#,0} bytes");
    }
}
