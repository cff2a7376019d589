using System.Globalization;
using Microsoft.Extensions.Options;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Plant.Mailing;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Worker.Jobs;

namespace WearWatch.Dashboard.Mailing;

/// <summary>Writes the mails that are due, each in the language of its person, and puts them into the mail box.</summary>
public sealed class MailWriter(
    MailDesk desk, MailBox box, PlantSettings settings, PlantClock clock, IOptions<MailOptions> options,
    IServiceProvider services, ILoggerFactory loggers, TimeProvider time)
    : JobLoop("writing of mails", options.Value.Every, time, loggers.CreateLogger<MailWriter>())
{
    private Uri Root => new(options.Value.Link.TrimEnd('/') + "/");

    /// <summary>Writes a mail that only shows a person that mail comes.</summary>
    public async Task WriteTestAsync(MailWishRow wish)
    {
        var (plant, said) = (await settings.CurrentAsync(), T["Mail from WearWatch reaches you."]);
        var now = (await clock.NowAsync(CancellationToken.None)).Now;
        var (key, subject) = ($"{wish.PersonId} test {Guid.NewGuid():N}", $"{plant.Name}: {T["Test mail"]}");
        await box.PutAsync(Row(key, wish, now, subject, said + "\n", $"<p>{said}</p>"), []);
    }

    protected override async Task RunOnceAsync(CancellationToken ct)
    {
        var due = await desk.DueAsync(ct);
        if (due.Count == 0) return;
        var (plant, now) = (await settings.CurrentAsync(ct), await clock.NowAsync(ct));
        foreach (var (person, wish, mail) in due)
        {
            var text = new NoticeMail(plant.Name, mail, now, Root);
            var row = await WriteAsync(text, wish, Tongue.Of(person.Language) ?? Tongue.English);
            await box.PutAsync(row, mail.New, ct);
        }
    }

    /// <remarks>The language holds for what this method awaits, and for nothing after it.</remarks>
    private async Task<MailRow> WriteAsync(NoticeMail mail, MailWishRow wish, Tongue tongue)
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = tongue.Culture;
        return Row(mail.Due.Key, wish, mail.Time.Now, mail.Subject, mail.PlainText(), await mail.HtmlAsync(services, loggers));
    }

    private static MailRow Row(
        string key, MailWishRow wish, DateTimeOffset now, string subject, string plainText, string html) => new()
        {
            Key = key,
            PersonId = wish.PersonId,
            Address = wish.Address,
            Subject = subject,
            PlainText = plainText,
            Html = html,
            WrittenAt = now,
            NextTryAt = now,
        };
}
