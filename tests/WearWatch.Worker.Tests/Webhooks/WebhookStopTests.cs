using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Webhooks;
using WearWatch.Storage.Rows;
using WearWatch.Worker.Tests.Planning;

namespace WearWatch.Worker.Tests.Webhooks;

/// <summary>The saved plan goes out as the packages of its shutdowns, with ids that stay.</summary>
public sealed class WebhookStopTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_saved_plan_goes_out_by_shutdown_and_its_swaps_keep_their_ids_until_they_are_decided_anew()
    {
        await using var mill = await PlannedMill.OpenAsync();
        Assert.Null((await mill.Get<WebhookDesk>().AddAsync(
            new NewWebhook("orders", "https://orders.example.org", [WebhookEventKind.StopPlanned], [], false), "Ada", Ct)).Fault);
        var draft = await mill.DraftAsync();
        var stops = draft.Board.Input.Windows.Where(w => w.Line == "Debarking").OrderBy(w => w.Start).Take(2).ToArray();
        draft.Move("D-1", stops[0].Id);
        await mill.KeepAsync(draft);
        var first = Assert.Single(await WrittenAsync(mill));
        Assert.Equal(stops[0].Id, (string)first["shutdown"]!);
        Assert.Equal(["D-1"], Chains(first));
        Assert.Equal(stops[0].Start, (DateTimeOffset)first["swaps"]![0]!["start"]!);
        Assert.True((int)first["swaps"]![0]!["kit"]!["cut_pitches"]! > 0);
        Assert.Contains(first["picks"]!.AsArray(), p => (string)p!["part"]! == "16B-1 chain");

        mill.Pass(TimeSpan.FromMinutes(1));
        draft = await mill.DraftAsync();
        draft.Move("D-2", stops[0].Id);
        await mill.KeepAsync(draft);
        var second = (await WrittenAsync(mill))[^1];
        Assert.Equal(["D-1", "D-2"], Chains(second).Order());
        Assert.Contains(Ids(first).Single(), Ids(second));

        mill.Pass(TimeSpan.FromMinutes(1));
        draft = await mill.DraftAsync();
        draft.Move("D-1", stops[1].Id);
        draft.Move("D-2", stops[1].Id);
        await mill.KeepAsync(draft);
        var written = await WrittenAsync(mill);
        Assert.Equal(4, written.Count);
        Assert.Empty(Chains(written.Skip(2).Single(w => (string)w["shutdown"]! == stops[0].Id)));
        var moved = written.Skip(2).Single(w => (string)w["shutdown"]! == stops[1].Id);
        Assert.Equal(["D-1", "D-2"], Chains(moved).Order());
        Assert.Empty(Ids(moved).Intersect(Ids(second)));
        Assert.Equal(4, (await WrittenAsync(mill)).Count);
    }

    [Fact]
    public async Task What_becomes_of_a_shutdown_that_has_begun_is_no_news_of_the_plan()
    {
        await using var mill = await PlannedMill.OpenAsync();
        Assert.Null((await mill.Get<WebhookDesk>().AddAsync(
            new NewWebhook("orders", "https://orders.example.org", [], [], false), "Ada", Ct)).Fault);
        var draft = await mill.DraftAsync();
        var stop = draft.Board.Input.Windows.Where(w => w.Line == "Debarking").MinBy(w => w.Start)!;
        draft.Move("D-1", stop.Id);
        await mill.KeepAsync(draft);
        Assert.Single(await WrittenAsync(mill));
        mill.Pass(stop.Start - mill.Now + TimeSpan.FromMinutes(1));
        await using (var db = mill.Db())
        {
            (await db.Swaps.SingleAsync(s => s.Outcome == SwapEnd.Planned, Ct)).Outcome = SwapEnd.Done;
            await db.SaveChangesAsync(Ct);
        }

        Assert.Single(await WrittenAsync(mill));
    }

    private static async Task<IReadOnlyList<JsonNode>> WrittenAsync(PlannedMill mill)
    {
        await mill.Get<WebhookWriter>().RunOnceAsync(Ct);
        await using var db = mill.Db();
        return [.. (await db.WebhookDeliveries.Where(d => d.Kind == WebhookEventKind.StopPlanned).OrderBy(d => d.Id)
            .ToListAsync(Ct)).Select(d => JsonNode.Parse(d.Body)!["data"]!)];
    }

    private static IEnumerable<string> Chains(JsonNode stop) => stop["swaps"]!.AsArray().Select(s => (string)s!["chain"]!);

    private static IEnumerable<string> Ids(JsonNode stop) => stop["swaps"]!.AsArray().Select(s => (string)s!["id"]!);
}
