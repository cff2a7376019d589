using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>One person's browser. It writes down what the browser complains about, and a test ends by looking at that.</summary>
public sealed class Visit : IAsyncDisposable
{
    private static readonly string axe = new BundledAxeScriptProvider().GetScript();

    private readonly IBrowserContext context;
    private readonly string? pictures;
    private readonly bool ownsContext;

    public Visit(IBrowserContext context, IPage page, string address, string? pictures, bool ownsContext = true)
    {
        (this.context, Page, Address, this.pictures, this.ownsContext) = (context, page, address, pictures, ownsContext);
        Listen(page);
    }

    public IPage Page { get; private set; }

    /// <summary>The dashboard's.</summary>
    public string Address { get; }

    /// <summary>Errors of the console, refused by the content policy, and answers of 500.</summary>
    public List<string> Complaints { get; } = [];

    /// <summary>Goes to a page and waits until it hears clicks.</summary>
    public async Task GoAsync(string path)
    {
        await Page.GotoAsync(Address + path);
        await ConnectedAsync();
    }

    /// <summary>Waits until the page hears clicks.</summary>
    public Task ConnectedAsync() =>
        Page.Locator("html[data-circuit=up]").WaitForAsync(new() { State = WaitForSelectorState.Attached });

    /// <summary>A second tab of the same browser.</summary>
    public async Task<IPage> SecondTabAsync(string path)
    {
        var tab = await context.NewPageAsync();
        Listen(tab);
        await tab.GotoAsync(Address + path);
        await tab.Locator("html[data-circuit=up]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        return tab;
    }

    /// <summary>Another visit by the same person: what the browser has loaded once, it has kept.</summary>
    public async Task<Visit> AgainAsync() => new(context, await context.NewPageAsync(), Address, pictures, ownsContext: false);

    /// <summary>Keeps a picture for a person to look at, when one asked for pictures.</summary>
    public Task PictureAsync(string name, bool whole = true) => pictures is null
        ? Task.CompletedTask
        : Page.ScreenshotAsync(
            new() { Path = Path.Combine(pictures, name + ".png"), FullPage = whole, Animations = ScreenshotAnimations.Disabled });

    /// <summary>What WCAG 2.2 AA finds on the page.</summary>
    public async Task<IReadOnlyList<string>> BarriersAsync()
    {
        // A page that comes alive has no title for a moment: the drawn one goes before the live one comes. One that is drawn once
        // stays as it is. Figures of an earlier choice are pale while the next are fetched.
        await Page.WaitForFunctionAsync("""
            () => document.title !== '' && !document.querySelector('main[aria-busy=true]')
              && (!document.querySelector('script[src*="blazor.web"]') || document.body.dataset.enhanceNav === 'false'
                || document.documentElement.dataset.circuit === 'up')
            """);
        await Page.EvaluateAsync(axe);
        return await Page.EvaluateAsync<string[]>("""
            async () => {
              // Of a target that a head or foot at the edge of the screen covers half, the rest is a push away: it is not small.
              const pinned = [...document.querySelectorAll('body *')].filter(e => !e.closest('dialog, [role$=dialog]')
                && ['fixed', 'sticky'].includes(getComputedStyle(e).position));
              pinned.forEach(e => e.style.position = 'static');
              const { violations } = await axe.run(document, {
                runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
                resultTypes: ['violations'],
              });
              pinned.forEach(e => e.style.position = '');
              return violations.flatMap(v => v.nodes.map(n => `${v.id}: ${n.html} (${v.help})`));
            }
            """);
    }

    /// <summary>What stands out over the right edge, so that one has to push the page sideways; empty on a good page.</summary>
    public async Task<string> OverTheEdgeAsync() => string.Join('\n', await Page.EvaluateAsync<string[]>("""
        () => {
          const edge = document.documentElement.clientWidth;
          if (document.documentElement.scrollWidth <= edge) return [];
          const scrolls = e => e && (e.matches('.scroll') || scrolls(e.parentElement));
          const over = [...document.body.querySelectorAll('*')]
            .filter(e => e.getBoundingClientRect().right > edge + 1)
            .filter(e => !e.closest('nav, .rz-notification, svg *') && !scrolls(e.parentElement))
            .map(e => `${e.tagName} ${e.className} ${Math.round(e.getBoundingClientRect().right)} of ${edge}`);
          return [`the page is ${document.documentElement.scrollWidth} of ${edge}`, ...over];
        }
        """));

    public async ValueTask DisposeAsync()
    {
        if (ownsContext) await context.DisposeAsync();
        else await Page.CloseAsync();
    }

    private void Listen(IPage page)
    {
        page.Console += (_, message) =>
        {
            if (message.Type == "error") Complaints.Add(message.Text);
        };
        page.PageError += (_, error) => Complaints.Add(error);
        page.Response += (_, response) =>
        {
            if (response.Status >= 500) Complaints.Add($"{response.Status} {response.Url}");
        };
    }
}
