using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Mailing;
using WearWatch.Dashboard.Tests.Shell;
using WearWatch.Plant.Mailing;
using WearWatch.Plant.Settings;
using WearWatch.Storage;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>The mails in the language whose texts all stand in brackets: they say nothing outside the languages.</summary>
public sealed class PseudoMailTests(DemoMillHost mill) : IClassFixture<DemoMillHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task No_mail_says_anything_outside_the_languages(bool isDaily)
    {
        var (time, notices) = (await mill.Get<PlantClock>().NowAsync(Ct), await NoticesAsync());
        Assert.NotEmpty(notices);
        var mail = new NoticeMail(
            "Mill", new MailDue("key", notices, notices, isDaily), time, new Uri("https://wear.mill.example/"));
        var data = await PseudoPagesTests.DataAsync(mill);
        foreach (var text in await InPseudoAsync(mail))
        {
            Assert.Contains('\u27E6', text);
            Assert.Empty(OutsideBrackets.In(text, data));
        }
    }

    private async Task<string[]> InPseudoAsync(NoticeMail mail)
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = Tongue.Pseudo.Culture;
        var html = await mail.HtmlAsync(mill.Get<IServiceProvider>(), mill.Get<ILoggerFactory>());
        return [mail.Subject, mail.PlainText(), VisibleText.OfPage(html)];
    }

    /// <summary>A notice of each kind that the demo mill has.</summary>
    private async Task<IReadOnlyList<MailNotice>> NoticesAsync()
    {
        await using var db = await mill.Get<IDbContextFactory<WearDb>>().CreateDbContextAsync(Ct);
        var chains = await db.Chains.AsNoTracking().ToDictionaryAsync(c => c.Id, Ct);
        var rows = await db.Notices.AsNoTracking().ToListAsync(Ct);
        return [.. rows.DistinctBy(n => n.Kind).Select(n => new MailNotice(n, chains[n.ChainId], null, n.RaisedAt))];
    }
}
