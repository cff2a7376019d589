using Microsoft.Playwright;

namespace WearWatch.Browser.Tests;

/// <summary>One dashboard and one browser for all tests. A machine without the browser fails them: nothing is skipped.</summary>
public sealed class Screen : IAsyncLifetime
{
    private static readonly string[] arguments =
        ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-component-update",
            "--disable-sync"];

    /// <summary>
    /// Where pictures go, artifacts/screenshots of the repository; null when nobody looks at them, as in most runs: they take a
    /// seventh of the time.
    /// </summary>
    private static readonly string? pictures = Environment.GetEnvironmentVariable("WEARWATCH_PICTURES") is null
        ? null
        : Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "screenshots")).FullName;

    /// <summary>
    /// How long anything may take to show. Far beyond what a person would bear: what is tested is that it shows, and a busy
    /// machine has no part in it. How long things take is measured elsewhere.
    /// </summary>
    private const int patienceMs = 120_000;

    private IPlaywright? driver;
    private IBrowser? browser;

    public DashboardHost Host { get; } = new();

    public string Address { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        Assertions.SetDefaultExpectTimeout(patienceMs);
        Address = Host.Listen();
        driver = await Playwright.CreateAsync();
        browser = await driver.Chromium.LaunchAsync(new() { ExecutablePath = Chromium(), Args = arguments });
    }

    /// <summary>A desk: 1400 x 900.</summary>
    /// <param name="dark">Whether the person took the dark look.</param>
    /// <param name="address">Another dashboard than the one of all tests.</param>
    /// <param name="locale">The language of the browser, such as <c>de-AT</c>; nothing is chosen yet.</param>
    public Task<Visit> AtDeskAsync(bool dark = false, string? address = null, string? locale = null) => VisitAsync(
        new() { ViewportSize = new() { Width = 1400, Height = 900 }, Locale = locale }, dark, address ?? Address);

    /// <summary>A phone in one hand: 390 x 844, touch.</summary>
    /// <param name="dark">Whether the person took the dark look.</param>
    /// <param name="address">Another dashboard than the one of all tests.</param>
    /// <param name="locale">The language of the browser, which the person chose as well.</param>
    /// <param name="network">The network between the phone and its server; none: a good one.</param>
    public Task<Visit> OnPhoneAsync(
        bool dark = false, string? address = null, string? locale = null, Proxy? network = null) =>
        VisitAsync(Phone(locale, network), dark, address ?? Address);

    /// <summary>A phone that keeps its memory in a folder: a browser of its own, which can be killed and started again.</summary>
    public async Task<IBrowserContext> PhoneWithMemoryAsync(string folder, Proxy? network)
    {
        var context = await driver!.Chromium.LaunchPersistentContextAsync(folder, new()
        {
            Proxy = network,
            ExecutablePath = Chromium(),
            Args = arguments,
            ViewportSize = new() { Width = 390, Height = 844 },
            IsMobile = true,
            HasTouch = true,
        });
        context.SetDefaultTimeout(patienceMs);
        return context;
    }

    /// <summary>A phone with a camera before which a film runs, over and over: a browser of its own.</summary>
    /// <param name="film">A file in the form YUV4MPEG2; null for a phone without a camera.</param>
    /// <param name="isAllowed">Whether the person lets the page use the camera.</param>
    public async Task<Visit> PhoneWithCameraAsync(string? film, bool isAllowed)
    {
        string[] camera = film is null
            ? ["--use-fake-device-for-media-stream=device-count=0"]
            : ["--use-fake-device-for-media-stream", $"--use-file-for-fake-video-capture={film}"];
        // A browser without windows has nobody whom it could ask.
        var answer = "--use-fake-ui-for-media-stream" + (isAllowed ? "" : "=deny");
        var seeing = await driver!.Chromium.LaunchAsync(
            new() { ExecutablePath = Chromium(), Args = [.. arguments, .. camera, answer] });
        var context = await seeing.NewContextAsync(Phone());
        context.SetDefaultTimeout(patienceMs);
        context.Close += (_, _) => _ = seeing.CloseAsync();
        return new Visit(context, await context.NewPageAsync(), Address, pictures);
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        driver?.Dispose();
        await Host.DisposeAsync();
    }

    private static BrowserNewContextOptions Phone(string? locale = null, Proxy? network = null) => new()
    {
        Proxy = network,
        ViewportSize = new() { Width = 390, Height = 844 },
        IsMobile = true,
        HasTouch = true,
        DeviceScaleFactor = 2,
        Locale = locale,
    };

    private async Task<Visit> VisitAsync(BrowserNewContextOptions options, bool dark, string address)
    {
        var context = await browser!.NewContextAsync(options);
        context.SetDefaultTimeout(patienceMs);
        if (dark) await context.AddCookiesAsync([new() { Name = "wearwatch-look", Value = "software-dark", Url = address }]);
        return new Visit(context, await context.NewPageAsync(), address, pictures);
    }

    private static string Chromium() =>
        new[]
        {
            Environment.GetEnvironmentVariable("WEARWATCH_CHROMIUM"),
            "/usr/bin/chromium-headless-shell", // the same engine without windows and extensions: half the processor time
            "/usr/bin/chromium",
            "/usr/bin/chromium-browser",
            "/usr/bin/google-chrome",
        }
            .FirstOrDefault(File.Exists)
        ?? throw new FileNotFoundException(
            "The browser tests need Chromium: install Debian's package chromium-headless-shell, "
            + "or set WEARWATCH_CHROMIUM to a Chromium's path.");
}
