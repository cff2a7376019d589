using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Mailing;
using WearWatch.Storage.Rows;
using WearWatch.Worker.Mailing;

namespace WearWatch.Worker.Tests.Mailing;

/// <summary>Mails go to a real mail server that is away for a while, refuses one, or loses its sender.</summary>
public sealed class MailCarrierTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Mails_wait_while_the_server_is_away_and_come_once_each_when_it_is_back()
    {
        await using var server = new MailReceiver();
        await using var plant = await TestPlant.OpenAsync(server.Settings);
        await PutAsync(plant, "first", "second", "third");
        await plant.StartAsync();
        await UntilAsync(plant, () => plant.Get<MailCarrier>().Trouble is not null);
        Assert.Equal(3, await plant.Get<MailBox>().WaitingAsync(Ct));
        server.Start();
        await UntilAsync(plant, () => server.Mails.Count == 3);
        await UntilAsync(plant, () => plant.Get<MailCarrier>().Trouble is null);
        plant.Clock.Advance(TimeSpan.FromHours(3));
        await Task.Delay(300, Ct);
        Assert.Equal(["first", "second", "third"], server.Mails.Select(m => m.Subject).Order());
        Assert.Equal(3, server.Mails.Select(m => m.MessageId).Distinct().Count());
        var mail = server.Mails[0];
        Assert.Equal(("Grüße\n", "<p>Grüße</p>"), (mail.TextBody!.ReplaceLineEndings("\n"), mail.HtmlBody!.Trim()));
        await using var db = plant.Db();
        Assert.True(await db.Mails.AllAsync(m => m.IsSent && m.EndedAt != null, Ct));
    }

    [Fact]
    public async Task A_mail_that_is_refused_for_good_is_given_up_with_its_reason_and_the_others_go_on()
    {
        await using var server = new MailReceiver { Unknown = "gone@mill.example" };
        server.Start();
        await using var plant = await TestPlant.OpenAsync(server.Settings);
        await PutAsync(plant, "first");
        await PutAsync(plant, "gone@mill.example", ["lost"]);
        await PutAsync(plant, "last");
        await plant.StartAsync();
        await UntilAsync(plant, () => server.Mails.Count == 2);
        await UntilAsync(plant, () => plant.Get<MailBox>().WaitingAsync(Ct).Result == 0);
        await using var db = plant.Db();
        var lost = await db.Mails.SingleAsync(m => !m.IsSent, Ct);
        Assert.Equal("lost", lost.Subject);
        Assert.NotEmpty(lost.Fault);
        Assert.Equal(["first", "last"], server.Mails.Select(m => m.Subject).Order());
    }

    [Fact]
    public async Task A_sender_that_the_server_refuses_loses_no_mail()
    {
        await using var server = new MailReceiver { RefusesSenders = true };
        server.Start();
        await using var plant = await TestPlant.OpenAsync(server.Settings);
        await PutAsync(plant, "first", "second");
        await plant.StartAsync();
        await UntilAsync(plant, () => plant.Get<MailCarrier>().Trouble is not null);
        Assert.Equal(2, await plant.Get<MailBox>().WaitingAsync(Ct));
        server.RefusesSenders = false;
        await UntilAsync(plant, () => server.Mails.Count == 2);
    }

    [Fact]
    public async Task Who_dies_over_a_mail_leaves_it_to_another_under_the_same_id()
    {
        await using var server = new MailReceiver();
        await using var plant = await TestPlant.OpenAsync(server.Settings);
        await PutAsync(plant, "held");
        var held = (await plant.Get<MailBox>().TakeAsync(Ct))!; // and never told how it went
        Assert.Null(await plant.Get<MailBox>().TakeAsync(Ct));
        plant.Clock.Advance(TimeSpan.FromMinutes(6));
        server.Start();
        await plant.StartAsync();
        await UntilAsync(plant, () => server.Mails.Count == 1);
        Assert.Equal(plant.Get<MailServer>().Message(held).MessageId, server.Mails[0].MessageId);
    }

    [Fact]
    public async Task Two_that_take_at_the_same_time_never_take_the_same_and_what_is_written_twice_is_kept_once()
    {
        await using var server = new MailReceiver();
        await using var plant = await TestPlant.OpenAsync(server.Settings);
        await PutAsync(plant, [.. Enumerable.Range(0, 20).Select(i => $"mail {i}")]);
        var box = plant.Get<MailBox>();
        var taken = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(TakeAllAsync, Ct)));
        Assert.Equal(20, taken.Sum(t => t.Count));
        Assert.Equal(20, taken.SelectMany(t => t).Distinct().Count());
        Assert.False(await box.PutAsync(Mail(plant, 1, "ina@mill.example", "mail 3"), [], Ct));

        async Task<List<long>> TakeAllAsync()
        {
            var mine = new List<long>();
            while (await box.TakeAsync(Ct) is { } mail) mine.Add(mail.Id);
            return mine;
        }
    }

    private static Task PutAsync(TestPlant plant, params string[] subjects) => PutAsync(plant, "ina@mill.example", subjects);

    private static async Task PutAsync(TestPlant plant, string address, string[] subjects)
    {
        await using var db = plant.Db();
        var person = await db.People.SingleOrDefaultAsync(Ct);
        if (person is null) db.People.Add(person = new PersonRow { UserName = "Ina", NormalizedUserName = "INA" });
        await db.SaveChangesAsync(Ct);
        foreach (var subject in subjects)
            Assert.True(await plant.Get<MailBox>().PutAsync(Mail(plant, person.Id, address, subject), [], Ct));
    }

    private static MailRow Mail(TestPlant plant, int person, string address, string subject) => new()
    {
        Key = subject,
        PersonId = person,
        Address = address,
        Subject = subject,
        PlainText = "Grüße\n",
        Html = "<p>Grüße</p>",
        WrittenAt = plant.Clock.GetUtcNow(),
        NextTryAt = plant.Clock.GetUtcNow(),
    };

    /// <summary>Lets the plant's clock go on until something has come about.</summary>
    private static async Task UntilAsync(TestPlant plant, Func<bool> isSo)
    {
        for (var i = 0; i < 600 && !isSo(); i++)
        {
            plant.Clock.Advance(TimeSpan.FromSeconds(10));
            await Task.Delay(50, Ct);
        }

        Assert.True(isSo());
    }
}
