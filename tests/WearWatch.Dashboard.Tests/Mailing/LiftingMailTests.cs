using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using WearWatch.Dashboard.Mailing;
using WearWatch.Dashboard.Tests.Lifting;
using WearWatch.Plant.Mailing;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Mailing;

/// <summary>A mail about every chain that lifts, in each state: its words keep hands off as those of the pages do.</summary>
public sealed class LiftingMailTests(LiftingPlantHost plant) : IClassFixture<LiftingPlantHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task No_mail_tells_what_must_not_be_told_and_each_has_the_caution()
    {
        await using (var db = await plant.Get<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct))
        {
            var person = new PersonRow { UserName = "Ina", NormalizedUserName = "INA" };
            db.People.Add(person);
            await db.SaveChangesAsync(Ct);
            db.MailWishes.Add(new() { PersonId = person.Id, Address = "ina@mill.example", Rhythm = MailRhythm.AtOnce });
            await db.SaveChangesAsync(Ct);
        }

        var (_, _, due) = Assert.Single(await plant.Get<MailDesk>().DueAsync(Ct));
        Assert.All(
            LiftingChains.Stopped.Concat(LiftingChains.Found), name => Assert.Contains(due.New, n => n.Chain.Name == name));
        var time = await plant.Get<PlantClock>().NowAsync(Ct);
        // One mail of all, and one of each, so that no other chain's caution stands for it.
        foreach (var some in due.New.Select(n => new[] { n }).Append([.. due.New]))
        {
            var mail = new NoticeMail("Mill", due with { New = some }, time, new Uri("https://wear.mill.example/"));
            foreach (var text in new[]
            {
                mail.PlainText(), await mail.HtmlAsync(plant.Get<IServiceProvider>(), plant.Get<ILoggerFactory>()),
            })
            {
                Assert.Empty(AdviceText.Forbidden(text));
                Assert.True(AdviceText.HasCaution(text), text);
            }
        }
    }
}
