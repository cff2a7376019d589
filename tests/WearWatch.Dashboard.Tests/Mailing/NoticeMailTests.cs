using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Dashboard.Tests.People;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;
using WearWatch.Worker.Tests.Mailing;

namespace WearWatch.Dashboard.Tests.Mailing;

/// <summary>What a person chooses is mailed: from the form of the page to the mail that a real server receives.</summary>
public sealed partial class NoticeMailTests : IAsyncLifetime
{
    private readonly MailReceiver server = new();
    private readonly DashboardHost plain = new();
    private WebApplicationFactory<Program> plant = null!;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync()
    {
        server.Start();
        plant = plain.WithWebHostBuilder(builder =>
        {
            foreach (var (key, value) in server.Settings) builder.UseSetting("WearWatch:" + key, value);
            builder.UseSetting("WearWatch:Mail:Every", "00:00:00.1");
        });
        return ValueTask.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        await plant.DisposeAsync();
        await plain.DisposeAsync();
        await server.DisposeAsync();
    }

    [Fact]
    public async Task A_notice_of_the_chosen_line_comes_once_in_the_persons_language_with_one_link()
    {
        using var ada = new Caller(plant);
        await ada.SetUpAsync();
        await ChooseAsync(ada, ("Form.Rhythm", "1"), ("Form.Lines", "Press"));
        await SpeakAsync("Ada", "de");
        await RaiseAsync("DRY-1", "Dryer", urgent: true);
        await RaiseAsync("PRESS-1", "Press", urgent: true);
        var mail = await NextAsync(1);
        Assert.Equal("Plant: Grenze nahe · dringend, PRESS-1", mail.Subject);
        Assert.Equal(("ada@mill.example", "wearwatch@mill.example"), (mail.To.Mailboxes.Single().Address,
            mail.From.Mailboxes.Single().Address));
        foreach (var text in new[] { mail.TextBody, mail.HtmlBody })
        {
            Assert.Contains("PRESS-1", text, StringComparison.Ordinal);
            Assert.DoesNotContain("DRY-1", text, StringComparison.Ordinal);
            Assert.Equal("https://wear.mill.example/chains/PRESS-1", Assert.Single(Links().Matches(text!)).Value);
        }

        Assert.Contains("Bis wann: jetzt", mail.TextBody, StringComparison.Ordinal);
        await Task.Delay(1000, Ct);
        Assert.Single(server.Mails);
    }

    [Fact]
    public async Task The_days_mail_names_what_is_new_and_what_is_still_open_and_leads_to_all()
    {
        using var ada = new Caller(plant);
        await ada.SetUpAsync();
        await ChooseAsync(ada, ("Form.Rhythm", "2"), ("Form.DailyAt", "00:00"));
        await RaiseAsync("PRESS-1", "Press", urgent: false);
        await RaiseAsync("PRESS-2", "Press", urgent: true);
        await Task.Delay(1000, Ct);
        Assert.Empty(server.Mails); // today's hour lay before she chose
        await using (var db = await OpenAsync())
        {
            var wish = await db.MailWishes.SingleAsync(Ct);
            wish.Since = wish.Since.AddDays(-1);
            db.MailedNotices.Add(new MailedNoticeRow { PersonId = wish.PersonId, NoticeId = 1, Urgent = false });
            await db.SaveChangesAsync(Ct);
        }

        var mail = await NextAsync(1);
        Assert.EndsWith(": 1 new, 1 open", mail.Subject, StringComparison.Ordinal);
        Assert.Matches(@"(?s)New\s.*PRESS-2.*Still open\s.*PRESS-1", mail.TextBody);
        Assert.Equal("https://wear.mill.example/notices", Assert.Single(Links().Matches(mail.TextBody!)).Value);
    }

    [Fact]
    public async Task What_cannot_be_is_said_and_not_kept_and_a_test_mail_comes_at_once()
    {
        using var ada = new Caller(plant);
        await ada.SetUpAsync();
        Assert.Contains("A mail address such as", await TryAsync(ada, ("Form.Rhythm", "1"), ("Form.Address", "ada")),
            StringComparison.Ordinal);
        Assert.Contains("a beginning and an end", await TryAsync(ada, ("Form.QuietFrom", "22:00")), StringComparison.Ordinal);
        Assert.Contains("The time of the day", await TryAsync(ada, ("Form.DailyAt", "")), StringComparison.Ordinal);
        await using (var db = await OpenAsync()) Assert.Empty(await db.MailWishes.ToListAsync(Ct));
        await ChooseAsync(ada, ("Form.Rhythm", "0"));
        await ada.SendFormAsync("/people/me", "mail-test");
        Assert.Equal("Plant: Test mail", (await NextAsync(1)).Subject);
        for (var wait = 0; wait < 100; wait++)
        {
            if ((await ada.Http.GetStringAsync("/people/me", Ct)).Contains("Last mail: sent ", StringComparison.Ordinal)) return;
            await Task.Delay(100, Ct);
        }

        Assert.Fail("The page never said that the mail was sent.");
    }

    [Fact]
    public async Task Who_is_switched_off_has_no_mail()
    {
        using var ada = new Caller(plant);
        await ada.SetUpAsync();
        using var bea = await ada.AddAsync("Bea", 1);
        await ChooseAsync(ada, ("Form.Rhythm", "1"));
        await ChooseAsync(bea, ("Form.Rhythm", "1"), ("Form.Address", "bea@mill.example"));
        await using (var db = await OpenAsync())
            await db.People.Where(p => p.UserName == "Bea").ExecuteUpdateAsync(p => p.SetProperty(x => x.IsOff, true), Ct);
        await RaiseAsync("PRESS-1", "Press", urgent: true);
        Assert.Equal("ada@mill.example", (await NextAsync(1)).To.Mailboxes.Single().Address);
        await Task.Delay(1000, Ct);
        Assert.Single(server.Mails);
    }

    private static async Task ChooseAsync(Caller person, params (string, string)[] fields) =>
        Assert.Contains("Saved.", await TryAsync(person, fields), StringComparison.Ordinal);

    private static async Task<string> TryAsync(Caller person, params (string Field, string Value)[] fields)
    {
        var all = new Dictionary<string, string> { ["Form.Address"] = "ada@mill.example", ["Form.DailyAt"] = "06:00" };
        foreach (var (field, value) in fields) all[field] = value;
        var answer = await person.SendFormAsync("/people/me", "mail", [.. all.Select(f => (f.Key, f.Value))]);
        return await answer.Content.ReadAsStringAsync(Ct);
    }

    private Task<WearDb> OpenAsync() => plant.Services.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);

    private async Task SpeakAsync(string name, string language)
    {
        await using var db = await OpenAsync();
        await db.People.Where(p => p.UserName == name).ExecuteUpdateAsync(p => p.SetProperty(x => x.Language, language), Ct);
    }

    private async Task RaiseAsync(string name, string line, bool urgent)
    {
        await using var db = await OpenAsync();
        var chain = new ChainRow { Name = name, Line = line, PitchMm = 25.4 };
        db.Chains.Add(chain);
        await db.SaveChangesAsync(Ct);
        db.Notices.Add(new NoticeRow
        {
            ChainId = chain.Id,
            Kind = NoticeKind.LimitNear,
            Urgent = urgent,
            Why = $"it wears",
            WhatToDo = $"look",
            RaisedAt = TimeProvider.System.GetUtcNow(),
        });
        await db.SaveChangesAsync(Ct);
    }

    private async Task<MimeKit.MimeMessage> NextAsync(int count)
    {
        for (var wait = 0; wait < 300 && server.Mails.Count < count; wait++) await Task.Delay(100, Ct);
        return server.Mails[count - 1];
    }

    [GeneratedRegex("https?://[^\"<\\s]+")]
    private static partial Regex Links();
}
