using System.Text;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using WearWatch.Chains;
using WearWatch.Plant.Mailing;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Mailing;

/// <summary>A mail about notices, in the language of what is drawn now: the same words in plain text and in HTML.</summary>
/// <param name="Plant">The plant's name.</param>
/// <param name="Due">What the mail is to hold.</param>
/// <param name="Time">The plant's time.</param>
/// <param name="Root">Where people open WearWatch.</param>
public sealed record NoticeMail(string Plant, MailDue Due, PlantTime Time, Uri Root)
{
    private IReadOnlyList<MailNotice> All => [.. Due.New, .. Due.Open];

    /// <summary>What it is, with the plant's name first.</summary>
    public string Subject => Plant + ": " + (Due.IsDaily
        ? T[$"Notices of {Time.Today}: {Due.New.Count} new, {Due.Open.Count} open"]
        : Due.New is [var one] ? new MailItem(one, Time).About + ", " + one.Chain.Name
        : T[$"{Due.New.Count} new notices"]);

    /// <summary>The notices by heading.</summary>
    public IReadOnlyList<(string Heading, IReadOnlyList<MailItem> Items)> Sections =>
        [.. new[] { (T["New"], Items(Due.New)), (T["Still open"], Items(Due.Open)) }.Where(s => s.Item2.Count > 0)];

    /// <summary>The one link: to the chain of the one notice, else to all of them.</summary>
    public Uri Link => new(Root, All is [var one] ? "chains/" + Uri.EscapeDataString(one.Chain.Name) : "notices");

    /// <summary>What to remember before a chain is touched, for all chains that the mail names.</summary>
    public IReadOnlyList<string> Cautions =>
        [.. All.SelectMany(n => Caution.For(n.Chain.Family, n.HoldsLoad)).Select(c => T[c]).Distinct()];

    /// <summary>Why it comes, and where that is changed.</summary>
    public static string Reason => T["You chose this mail on your own page in WearWatch; change it there."];

    /// <summary>The mail as plain text.</summary>
    public string PlainText()
    {
        var text = new StringBuilder();
        foreach (var (heading, items) in Sections)
        {
            text.Append(heading).AppendLine().AppendLine();
            foreach (var item in items)
            {
                text.AppendLine(item.Chain).AppendLine(item.About).AppendLine(item.Why);
                text.AppendJoin('\n', item.Lines).AppendLine().AppendLine();
            }
        }

        return text.Append(Link).AppendLine().AppendLine().AppendJoin('\n', Cautions).AppendLine().AppendLine().AppendLine(Reason)
            .ToString().ReplaceLineEndings("\n");
    }

    /// <summary>The mail as HTML.</summary>
    public async Task<string> HtmlAsync(IServiceProvider services, ILoggerFactory loggers)
    {
        await using var scope = services.CreateAsyncScope();
        await using var renderer = new HtmlRenderer(scope.ServiceProvider, loggers);
        var asked = ParameterView.FromDictionary(new Dictionary<string, object?> { [nameof(NoticeMailBody.Mail)] = this });
        return await renderer.Dispatcher.InvokeAsync(async () =>
            (await renderer.RenderComponentAsync<NoticeMailBody>(asked)).ToHtmlString());
    }

    private IReadOnlyList<MailItem> Items(IReadOnlyList<MailNotice> notices) =>
        [.. notices.Select(n => new MailItem(n, Time))];
}
