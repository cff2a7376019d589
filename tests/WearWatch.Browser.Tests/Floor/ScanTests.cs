using Microsoft.Playwright;
using QRCoder;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>A chain's label is scanned by the camera in the floor's own page, without signal too.</summary>
public sealed class ScanTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    [Fact]
    public async Task A_printed_label_before_the_camera_opens_its_chain_without_signal()
    {
        var (id, _) = await plant.TakeInAsync("SCAN");
        using var film = new CameraFilm();
        await using (var desk = await screen.AtDeskAsync())
        {
            await desk.Page.GotoAsync($"{screen.Address}/labels");
            var label = desk.Page.Locator(".label", new() { Has = desk.Page.GetByText("SCAN-1", new() { Exact = true }) });
            var code = await label.Locator("svg").First
                .EvaluateAsync<string>("svg => new XMLSerializer().serializeToString(svg)");
            await film.ShootAsync(desk.Page, code);
        }

        await using var phone = await OpenAsync(film, isAllowed: true);
        var page = phone.Page;
        await page.Context.SetOfflineAsync(true);
        await page.ShowAsync("#/find");
        await page.GetByRole(AriaRole.Link, new() { Name = "Scan label" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "SCAN-1" })).ToBeVisibleAsync();
        Assert.EndsWith($"#/chain/{id}", page.Url, StringComparison.Ordinal);
        await page.GoBackAsync(); // to where one looked for it, not to the camera
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Which chain?" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_code_of_something_else_is_said_to_be_so_and_the_camera_goes_on_until_the_screen_is_left()
    {
        using var film = new CameraFilm();
        await using (var desk = await screen.AtDeskAsync())
        {
            await film.ShootAsync(desk.Page, CodeOf("spare part 4711"));
        }

        await using var phone = await OpenAsync(film, isAllowed: true);
        var page = phone.Page;
        await page.ShowAsync("#/scan");
        await Assertions.Expect(page.GetByText("This code is not a chain’s label.")).ToBeVisibleAsync();
        await phone.PictureAsync("floor-scan-phone", whole: false);
        foreach (var (width, look) in new[] { (360, "light"), (390, "dark"), (768, "sun") })
        {
            await page.SetViewportSizeAsync(width, 780);
            await page.EvaluateAsync("look => { document.documentElement.dataset.look = look; }", look);
            await phone.PictureAsync($"floor-scan-{width}-{look}", whole: false);
            Assert.Empty(await phone.BarriersAsync());
            Assert.Equal("", await phone.OverTheEdgeAsync());
        }

        await page.EvaluateAsync("() => { window.track = document.querySelector('video').srcObject.getTracks()[0]; }");
        Assert.Equal("live", await page.EvaluateAsync<string>("() => window.track.readyState"));
        await page.GetByRole(AriaRole.Link, new() { Name = "Find the chain by name" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Which chain?" })).ToBeVisibleAsync();
        Assert.Equal("ended", await page.EvaluateAsync<string>("() => window.track.readyState"));
    }

    [Fact]
    public async Task Where_the_browser_reads_codes_itself_the_library_is_not_loaded()
    {
        var (id, mark) = await plant.TakeInAsync("OWNREADER");
        using var film = new CameraFilm();
        await using (var desk = await screen.AtDeskAsync())
        {
            await film.ShootAsync(desk.Page, CodeOf("nothing that is looked at"));
        }

        await using var phone = await OpenAsync(film, isAllowed: true);
        var page = phone.Page;
        await page.EvaluateAsync("""
            address => {
              globalThis.BarcodeDetector = class {
                static getSupportedFormats = async () => ['ean_13', 'qr_code'];
                detect = async video => (video.videoWidth > 0 ? [{ rawValue: '4711' }, { rawValue: address }] : []);
              };
            }
            """, $"https://another-name.example/floor/at/{mark}/{id}");
        await page.ShowAsync("#/find");
        await page.GetByRole(AriaRole.Link, new() { Name = "Scan label" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "OWNREADER-1" })).ToBeVisibleAsync();
        Assert.False(await page.EvaluateAsync<bool>(
            "() => performance.getEntriesByType('resource').some(each => each.name.includes('/lib/qr/'))"));
    }

    [Theory]
    [InlineData(true, "The camera is not allowed.")]
    [InlineData(false, "No camera can be used.")]
    public async Task Without_a_camera_it_says_so_and_the_list_stands_there(bool hasCamera, string told)
    {
        var name = hasCamera ? "REFUSED" : "ABSENT";
        await plant.TakeInAsync(name);
        using var film = new CameraFilm();
        if (hasCamera)
        {
            await using var desk = await screen.AtDeskAsync();
            await film.ShootAsync(desk.Page, CodeOf("never seen"));
        }

        await using var phone = await OpenAsync(hasCamera ? film : null, isAllowed: !hasCamera);
        var page = phone.Page;
        await page.ShowAsync("#/scan");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync(told);
        await page.GetByLabel("Part of the name, line or place").FillAsync(name);
        await phone.PictureAsync($"floor-scan-{name.ToLowerInvariant()}-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await page.GetByRole(AriaRole.Link, new() { Name = name + "-1" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = name + "-1" })).ToBeVisibleAsync();
        Assert.Empty(phone.Complaints);
    }

    private async Task<Visit> OpenAsync(CameraFilm? film, bool isAllowed)
    {
        var phone = await screen.PhoneWithCameraAsync(film?.Path, isAllowed);
        await phone.Page.RouteAsync("**/api/v1/me", route => route.FulfillAsync(
            new() { ContentType = "application/json", Body = """{"id":null,"name":""}""" }));
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        return phone;
    }

    private static string CodeOf(string text)
    {
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.Q);
        using var code = new SvgQRCode(data);
        return code.GetGraphic(4, "#000000", "#ffffff", true, SvgQRCode.SizingMode.ViewBoxAttribute);
    }
}
