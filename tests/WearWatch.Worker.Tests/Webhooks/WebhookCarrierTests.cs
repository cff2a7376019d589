using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Webhooks;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Webhooks;

/// <summary>Events go to a real receiver that fails for a while, redirects, wants no more or is away.</summary>
public sealed class WebhookCarrierTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_receiver_that_fails_five_times_has_each_event_once_in_order_as_a_signed_CloudEvent()
    {
        await using var receiver = Started();
        receiver.Answer = (n, _) => n <= 5 ? 500 : 200;
        await using var hooked = await HookedPlant.OpenAsync();
        var secret = await hooked.AddAsync(receiver.Url);
        for (var i = 0; i < 4; i++) await hooked.RaiseAsync("C1", (NoticeKind)i);
        await hooked.Plant.StartAsync();
        await hooked.UntilAsync(() => receiver.Taken.Count == 4);
        await hooked.UntilAsync(() => TroubleOf(hooked).Count == 0);
        hooked.Plant.Clock.Advance(TimeSpan.FromHours(3));
        await Task.Delay(300, Ct);

        Assert.Equal(9, receiver.All.Count);
        Assert.Equal((await hooked.WrittenAsync()).Select(w => w.EventId), receiver.Taken.Select(t => t.Id));
        Assert.Single(receiver.All.Take(6).Select(a => a.Id).Distinct());
        Assert.All(receiver.All, a => Assert.Equal(ReceivedEvent.Signature(secret, a), a.Headers["webhook-signature"]));
        var first = ReceivedEvent.Decoded(receiver.Taken[0]);
        Assert.Equal(("wearwatch.notice.raised.v1", receiver.Taken[0].Id, "C1", "/wearwatch"),
            (first.Type, first.Id, first.Subject, first.Source!.ToString()));
        Assert.Equal(TestPlant.Start, first.Time);
        Assert.All(await hooked.WrittenAsync(), w => Assert.Equal(
            (WebhookState.Delivered, 200, true), (w.State, w.Status, w.Fault.IsEmpty)));
    }

    [Fact]
    public async Task A_redirect_is_not_followed()
    {
        await using var receiver = Started();
        receiver.Answer = (_, answer) =>
        {
            answer.RedirectLocation = "/inside";
            return 307;
        };
        await using var hooked = await HookedPlant.OpenAsync();
        await hooked.AddAsync(receiver.Url);
        await hooked.RaiseAsync();
        await hooked.Plant.StartAsync();
        await hooked.UntilAsync(() => receiver.All.Count >= 2);
        Assert.All(receiver.All, a => Assert.Equal("/hooks", a.Path));
        var fault = (await hooked.WrittenAsync())[0].Fault.ToString();
        Assert.Contains("Redirects are not followed", fault, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_receiver_that_wants_no_more_is_paused_nothing_is_lost_and_a_person_lets_it_go_on()
    {
        await using var receiver = Started();
        receiver.Answer = (n, _) => n == 1 ? 410 : 204;
        await using var hooked = await HookedPlant.OpenAsync();
        await hooked.AddAsync(receiver.Url);
        await hooked.RaiseAsync();
        await hooked.Plant.StartAsync();
        await hooked.UntilAsync(() => hooked.AddressAsync().Result.IsPaused);
        await hooked.RaiseAsync("C2");
        hooked.Plant.Clock.Advance(TimeSpan.FromHours(2));
        await Task.Delay(300, Ct);
        Assert.Single(receiver.All);
        Assert.Single(TroubleOf(hooked));
        await using (var db = hooked.Plant.Db())
            Assert.Equal(PlantNoticeKind.WebhookStopped, (await db.PlantNotices.SingleAsync(Ct)).Kind);
        var address = await hooked.AddressAsync();
        Assert.Null(await hooked.Get<WebhookDesk>().ChangeAsync(
            address.Id, new NewWebhook(address.Name, address.Url, [], [], IsPaused: false), Ct));
        await hooked.UntilAsync(() => receiver.Taken.Count == 2);
        await hooked.UntilAsync(() => TroubleOf(hooked).Count == 0);
    }

    [Fact]
    public async Task A_receiver_is_left_alone_for_as_long_as_it_asks()
    {
        await using var receiver = Started();
        receiver.Answer = (n, answer) =>
        {
            if (n == 1) answer.Headers["Retry-After"] = "600";
            return n == 1 ? 503 : 204;
        };
        await using var hooked = await HookedPlant.OpenAsync();
        await hooked.AddAsync(receiver.Url);
        await hooked.RaiseAsync();
        await hooked.Plant.StartAsync();
        await hooked.UntilAsync(() => hooked.AddressAsync().Result.Failures == 1);
        var pause = (await hooked.AddressAsync()).NextTryAt - TestPlant.Start;
        Assert.InRange(pause, TimeSpan.FromSeconds(600), TimeSpan.FromSeconds(660));
        await hooked.UntilAsync(() => receiver.Taken.Count == 1, TimeSpan.FromSeconds(20));
    }

    [Fact]
    public async Task What_nobody_takes_for_three_days_is_given_up_with_a_notice_and_sent_again_on_demand()
    {
        await using var receiver = Started();
        receiver.Answer = (_, _) => 400;
        await using var hooked = await HookedPlant.OpenAsync("00:10:00");
        await hooked.AddAsync(receiver.Url);
        await hooked.RaiseAsync();
        await hooked.Plant.StartAsync();
        await hooked.UntilAsync(() => State(hooked) == WebhookState.GivenUp, TimeSpan.FromMinutes(30));
        // 5 s, 10 s, ... up to an hour: a dozen tries until then, and one an hour for the rest of three days.
        Assert.InRange(receiver.All.Count, 40, 110);
        await using (var db = hooked.Plant.Db())
        {
            var why = (await db.PlantNotices.SingleAsync(Ct)).Why.ToString();
            Assert.Contains("within three days", why, StringComparison.Ordinal);
        }

        receiver.Answer = (_, _) => 204;
        var given = (await hooked.WrittenAsync())[0];
        Assert.True(await hooked.Get<WebhookBox>().SendAgainAsync(given.Id, Ct));
        await hooked.UntilAsync(() => State(hooked) == WebhookState.Delivered, TimeSpan.FromMinutes(5));
        Assert.Equal(given.EventId, receiver.Taken.Single().Id);
    }

    [Fact]
    public async Task A_host_that_leads_inside_is_never_called_though_its_name_was_taken()
    {
        await using var receiver = Started();
        await using var hooked = await HookedPlant.OpenAsync();
        await hooked.AddAsync("https://orders.example.org/hooks");
        await using (var db = hooked.Plant.Db())
        {
            // As a name would lead there that comes to mean another address after it was entered.
            (await db.WebhookAddresses.SingleAsync(Ct)).Url = "http://169.254.169.254/latest";
            await db.SaveChangesAsync(Ct);
        }

        await hooked.RaiseAsync();
        await hooked.Plant.StartAsync();
        await hooked.UntilAsync(() => hooked.AddressAsync().Result.Failures > 0);
        Assert.Equal(WebhookHosts.NotAllowed, (await hooked.WrittenAsync())[0].Fault);
    }

    [Fact]
    public async Task Who_dies_over_an_event_leaves_it_to_another_under_the_same_id()
    {
        await using var receiver = Started();
        await using var hooked = await HookedPlant.OpenAsync();
        await hooked.AddAsync(receiver.Url);
        await hooked.RaiseAsync();
        var held = (await hooked.WrittenAsync())[0];
        Assert.NotNull(await hooked.Get<WebhookBox>().TakeAsync(Ct)); // and never told how it went
        Assert.Null(await hooked.Get<WebhookBox>().TakeAsync(Ct));
        await hooked.Plant.StartAsync();
        await Task.Delay(300, Ct);
        Assert.Empty(receiver.All);
        await hooked.UntilAsync(() => receiver.Taken.Count == 1, TimeSpan.FromSeconds(10));
        Assert.Equal(held.EventId, receiver.Taken[0].Id);
    }

    [Fact]
    public async Task One_receiver_that_is_away_holds_up_no_other()
    {
        await using var receiver = Started();
        await using var hooked = await HookedPlant.OpenAsync();
        await hooked.AddAsync("http://127.0.0.1:9/hooks", "away");
        await hooked.AddAsync(receiver.Url, "there");
        for (var i = 0; i < 5; i++) await hooked.RaiseAsync("C1", (NoticeKind)i);
        await hooked.Plant.StartAsync();
        await hooked.UntilAsync(() => receiver.Taken.Count == 5);
        Assert.Equal("away", Assert.Single(TroubleOf(hooked)).Name);
    }

    private static WebhookReceiver Started()
    {
        var receiver = new WebhookReceiver();
        receiver.Start();
        return receiver;
    }

    private static IReadOnlyList<(string Name, Phrases.Phrase Why)> TroubleOf(HookedPlant hooked) =>
        hooked.Get<WebhookBox>().TroublesAsync(Ct).Result;

    private static WebhookState State(HookedPlant hooked)
    {
        using var db = hooked.Plant.Db();
        return db.WebhookDeliveries.AsNoTracking().SingleOrDefault()?.State ?? WebhookState.Waiting;
    }
}
