using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Webhooks;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Webhooks;

/// <summary>What happens is written for each address that wants it: once, whoever looks and whenever.</summary>
public sealed class WebhookWriterTests
{
    private const string Anywhere = "https://orders.example.org/hooks";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_notice_is_told_when_it_is_raised_changed_and_ended_once_each()
    {
        await using var hooked = await HookedPlant.OpenAsync();
        await hooked.AddAsync(Anywhere);
        var notice = await hooked.RaiseAsync();
        Assert.Equal([WebhookEventKind.NoticeRaised], Kinds(await hooked.WrittenAsync()));
        Assert.Single(await hooked.WrittenAsync());
        await hooked.ChangeAsync(notice, n => n.Urgent = true);
        await hooked.WrittenAsync();
        await hooked.ChangeAsync(notice, n => n.AssignedTo = "Vera");
        await hooked.WrittenAsync();
        await hooked.ChangeAsync(notice, n => n.EndedAt = hooked.Plant.Clock.GetUtcNow());
        var written = await hooked.WrittenAsync();
        Assert.Equal(
            [
                WebhookEventKind.NoticeRaised, WebhookEventKind.NoticeChanged, WebhookEventKind.NoticeChanged,
                WebhookEventKind.NoticeEnded,
            ],
            Kinds(written));
        Assert.Equal(4, written.Select(w => w.EventId).Distinct().Count());
        Assert.True((bool)Data(written[1])["urgent"]!);
        Assert.True((bool)Data(written[2])["assigned"]!);
        Assert.NotNull(Data(written[3])["ended_at"]);
        Assert.DoesNotContain(written, w => w.Body.Contains("Vera", StringComparison.Ordinal));
        Assert.Equal(4, (await hooked.WrittenAsync()).Count);
    }

    [Fact]
    public async Task What_was_raised_and_ended_while_nobody_looked_is_told_with_both()
    {
        await using var hooked = await HookedPlant.OpenAsync();
        await hooked.AddAsync(Anywhere);
        var notice = await hooked.RaiseAsync();
        await hooked.ChangeAsync(notice, n => n.EndedAt = hooked.Plant.Clock.GetUtcNow());
        var written = await hooked.WrittenAsync();
        Assert.Equal([WebhookEventKind.NoticeRaised, WebhookEventKind.NoticeEnded], Kinds(written));
        Assert.Null(Data(written[0])["ended_at"]);
    }

    [Fact]
    public async Task What_was_before_the_first_address_is_not_told_but_its_end_is()
    {
        await using var hooked = await HookedPlant.OpenAsync();
        var notice = await hooked.RaiseAsync();
        await hooked.AddAsync(Anywhere);
        Assert.Empty(await hooked.WrittenAsync());
        await hooked.ChangeAsync(notice, n => n.EndedAt = hooked.Plant.Clock.GetUtcNow());
        Assert.Equal([WebhookEventKind.NoticeEnded], Kinds(await hooked.WrittenAsync()));
    }

    [Fact]
    public async Task An_address_has_only_the_events_and_lines_that_were_chosen_and_many_that_look_write_each_once()
    {
        await using var hooked = await HookedPlant.OpenAsync();
        await hooked.AddAsync(Anywhere, "all");
        await hooked.AddAsync(Anywhere, "press", lines: ["Press"]);
        await hooked.AddAsync(Anywhere, "ends", kinds: [WebhookEventKind.NoticeEnded]);
        var beside = hooked.Plant.Database.Length > 0
            ? hooked.Plant.Beside().Services.GetRequiredService<WebhookWriter>()
            : hooked.Get<WebhookWriter>();
        for (var i = 0; i < 5; i++)
        {
            await hooked.RaiseAsync("C1", (Wear.NoticeKind)i);
            await hooked.RaiseAsync("C2", (Wear.NoticeKind)i);
        }

        await Task.WhenAll(Enumerable.Range(0, 4).Select(i => Task.Run(
            () => (i % 2 == 0 ? beside : hooked.Get<WebhookWriter>()).RunOnceAsync(Ct), Ct)));
        var written = (await hooked.WrittenAsync()).ToLookup(w => w.AddressId);
        Assert.Equal(10, written[(await hooked.AddressAsync("all")).Id].Count());
        Assert.Equal(["C1"], written[(await hooked.AddressAsync("press")).Id].Select(w => w.Subject).Distinct());
        Assert.Empty(written[(await hooked.AddressAsync("ends")).Id]);
    }

    [Fact]
    public async Task A_replacement_is_told_with_its_facts_its_withdrawal_too_and_old_history_is_not()
    {
        await using var hooked = await HookedPlant.OpenAsync();
        await hooked.AddAsync(Anywhere, kinds: [WebhookEventKind.ChainReplaced]);
        var id = Assert.IsType<IntakeAnswer.Taken>(await hooked.Plant.Desk.TakeEventAsync(
            Replacement("now", TestPlant.Start), Ct)).Id;
        Assert.IsType<IntakeAnswer.Taken>(await hooked.Plant.Desk.TakeEventAsync(
            Replacement("long ago", TestPlant.Start.AddDays(-40)), Ct));
        Assert.IsType<IntakeAnswer.Taken>(await hooked.Plant.Desk.WithdrawEventAsync(id, "Ina", "a slip", Ct));
        var written = await hooked.WrittenAsync();
        Assert.Equal(2, written.Count);
        Assert.Equal(("C1", id, "L-7", true, false),
            (written[0].Subject, (long)Data(written[0])["event"]!, (string)Data(written[0])["lot"]!,
                (bool)Data(written[0])["broke"]!, (bool)Data(written[0])["withdrawn"]!));
        Assert.Equal((id, true), ((long)Data(written[1])["corrects"]!, (bool)Data(written[1])["withdrawn"]!));
        Assert.DoesNotContain(written, w => w.Body.Contains("Ina", StringComparison.Ordinal));
    }

    private static NewEvent Replacement(string key, DateTimeOffset at) => new()
    {
        Key = key,
        Told = new ChainEvent { Chain = "C1", Kind = ChainEventKind.Replacement, At = at, Lot = "L-7", Broke = true },
        ToldBy = "Ina",
        Confirmed = true,
    };

    private static IEnumerable<WebhookEventKind> Kinds(IEnumerable<WebhookDeliveryRow> written) => written.Select(w => w.Kind);

    private static JsonNode Data(WebhookDeliveryRow written) => JsonNode.Parse(written.Body)!["data"]!;
}
