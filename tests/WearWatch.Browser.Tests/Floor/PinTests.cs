using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>A person takes a shared device over without signal by a PIN, of which the device keeps a verifier only.</summary>
public sealed class PinTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);
    private string me = Ann;
    private bool hasSignal = true;

    private const string Ann = """{"id":1,"name":"Ann Berg"}""";
    private const string Ben = """{"id":2,"name":"Ben Holt"}""";

    [Fact]
    public async Task Who_types_the_PIN_enters_under_the_own_name_and_it_is_sent_once_that_person_has_signed_in()
    {
        var (id, _) = await plant.TakeInAsync("PIN");
        await using var phone = await OpenAsync();
        var page = phone.Page;
        await page.SetPinAsync("2741");
        await AsAsync(page, Ben);
        await page.SetPinAsync("5093");
        await phone.PictureAsync("floor-pin-set-phone", whole: false);
        await AsAsync(page, Ann);

        await SignalAsync(page, false);
        await page.ChoosePersonAsync("Ben Holt");
        await phone.PictureAsync("floor-pin-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await page.TypePinAsync("5039");
        await Assertions.Expect(page.GetByText("Wrong PIN. Tries left: 9.")).ToBeVisibleAsync();
        await page.TypePinAsync("5093");
        await Assertions.Expect(page.Locator("#who")).ToHaveTextAsync("BH");
        await Assertions.Expect(page.GetByText("Ben Holt enters by PIN: it waits for the sign-in.")).ToBeVisibleAsync();
        await phone.PictureAsync("floor-pin-entered-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await page.MeasureAsync(id, "5000", "1234.5");
        await page.ShowAsync("#/kept");
        await Assertions.Expect(page.Locator(".entry.kept")).ToContainTextAsync("by Ben Holt"); // the own entries are not sealed

        // Ann comes back by her PIN: what Ben entered is hidden from her, and her session does not send it.
        await page.ChoosePersonAsync("Ann Berg");
        await page.TypePinAsync("2741");
        await Assertions.Expect(page.Locator("#who")).ToHaveTextAsync("AB");
        await SignalAsync(page, true);
        await page.ShowAsync("#/kept");
        await Assertions.Expect(page.GetByText("An entry of Ben Holt: sign in as that person")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Send 1 now" }).TapAsync();
        await Assertions.Expect(page.GetByText("These wait for Ben Holt")).ToBeVisibleAsync();
        Assert.Equal(5, (await plant.ReadingsAsync("PIN-1")).Count);
        me = Ben;
        await page.GetByRole(AriaRole.Button, new() { Name = "Send 1 now" }).TapAsync();
        await Assertions.Expect(page.Locator("#kept")).ToHaveTextAsync("Kept 0");
        Assert.Equal("Ben Holt", (await plant.ReadingsAsync("PIN-1"))[^1].GetProperty("told_by").GetString());
        Assert.DoesNotContain(phone.Complaints, c => !c.Contains("ERR_INTERNET_DISCONNECTED", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Wrong_PINs_are_counted_over_a_reload_make_wait_longer_and_longer_and_end_with_a_sign_in()
    {
        await using var phone = await OpenAsync();
        var page = phone.Page;
        await AsAsync(page, Ben);
        await page.SetPinAsync("5093");
        await AsAsync(page, Ann);
        await SignalAsync(page, false);
        await page.ChoosePersonAsync("Ben Holt");
        for (var left = 9; left > 6; left--)
        {
            await page.TypePinAsync("5039");
            await Assertions.Expect(page.GetByText($"Wrong PIN. Tries left: {left}.")).ToBeVisibleAsync();
        }

        await page.TypePinAsync("5039");
        await Assertions.Expect(page.GetByText("Wrong PIN. Tries left: 6. Wait 5 s.")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await page.ReadyAsync();
        Assert.Equal((6, 0), await TryAsync(page, "5093", hoursLater: 0));
        Assert.Equal((5, 10), await TryAsync(page, "5039", hoursLater: 1));
        Assert.Equal((4, 20), await TryAsync(page, "5039", hoursLater: 2));
        Assert.Equal((4, 0), await TryAsync(page, "5093", hoursLater: -48)); // a clock that was set back opens nothing
        for (var left = 3; left > 0; left--)
            Assert.Equal((left, 5 * (1 << (6 - left))), await TryAsync(page, "5039", hoursLater: 6 - left));

        await TryAsync(page, "5039", hoursLater: 9);
        Assert.Equal((0, 0), await TryAsync(page, "5093", hoursLater: 20));
        Assert.True(await page.EvaluateAsync<bool>(
            "async () => (await (await import('/floor/pin.js')).holders())[0].verifier === null"));

        // The name alone is no way around.
        await page.ShowAsync("#/who");
        await page.GetByLabel("Your name").FillAsync("ben holt");
        await page.GetByRole(AriaRole.Button, new() { Name = "I enter now" }).TapAsync();
        await page.TypePinAsync("5093");
        await Assertions.Expect(page.GetByText("Too many wrong PINs. Sign in with signal")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#who")).ToHaveTextAsync("AB");
        await phone.PictureAsync("floor-pin-spent-phone", whole: false);
        Assert.Empty(await phone.BarriersAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Somebody else" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Ben Holt" })).ToBeVisibleAsync();

        await SignalAsync(page, true);
        await AsAsync(page, Ben);
        await page.SetPinAsync("8316");
        await AsAsync(page, Ann);
        await page.ChoosePersonAsync("Ben Holt");
        await page.TypePinAsync("8316");
        await Assertions.Expect(page.Locator("#who")).ToHaveTextAsync("BH");
        await page.ShowAsync("#/pin");
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove my PIN" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Remove my PIN" })).ToHaveCountAsync(0);
        Assert.Equal(0, await page.EvaluateAsync<int>(
            "async () => (await (await import('/floor/pin.js')).holders()).length"));
    }

    [Fact]
    public async Task The_device_keeps_no_PIN_and_it_is_set_only_by_whom_the_server_knows()
    {
        await using var phone = await OpenAsync();
        var page = phone.Page;
        await page.SetPinAsync("40719");
        var kept = await page.EvaluateAsync<string>("""
            async () => JSON.stringify(await (await import('/floor/pin.js')).holders(), (_, told) =>
              told instanceof Uint8Array ? `${told.length} bytes` : told)
            """);
        Assert.DoesNotContain("40719", kept, StringComparison.Ordinal);
        Assert.Contains("\"salt\":\"16 bytes\"", kept, StringComparison.Ordinal);
        Assert.Contains("\"verifier\":\"32 bytes\"", kept, StringComparison.Ordinal);
        Assert.Contains("\"iterations\":600000", kept, StringComparison.Ordinal);
        await SignalAsync(page, false);
        await page.EnterNewPinAsync("26850", "26850");
        await Assertions.Expect(page.GetByText("To set it, be signed in yourself, with signal.")).ToBeVisibleAsync();
        await page.EnterNewPinAsync("26850", "26851");
        await Assertions.Expect(page.GetByText("The two PINs differ.")).ToBeVisibleAsync();
    }

    private async Task<Visit> OpenAsync()
    {
        var phone = await screen.OnPhoneAsync();
        await phone.Page.RouteAsync("**/api/v1/me", route => hasSignal
            ? route.FulfillAsync(new() { ContentType = "application/json", Body = me })
            : route.AbortAsync("internetdisconnected"));
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        return phone;
    }

    private Task SignalAsync(IPage page, bool has)
    {
        hasSignal = has;
        return page.Context.SetOfflineAsync(!has);
    }

    /// <summary>Another person has signed in at this device.</summary>
    private async Task AsAsync(IPage page, string person)
    {
        me = person;
        await page.ReloadAsync();
        await page.ReadyAsync();
        await Assertions.Expect(page.Locator("#who")).ToHaveTextAsync(person == Ann ? "AB" : "BH");
    }

    /// <summary>Tries Ben's PIN at a later hour: the tries left, and the seconds of the wait that a miss began.</summary>
    private static async Task<(int Left, int WaitS)> TryAsync(IPage page, string pin, int hoursLater)
    {
        var told = await page.EvaluateAsync<int[]>(Trying, new { pin, hoursLater });
        return (told[0], told[1]);
    }

    private const string Trying = """
        async ({ pin, hoursLater }) => {
          const { tryPin } = await import('/floor/pin.js');
          const real = globalThis.realNow ??= Date.now.bind(Date);
          Date.now = () => real() + hoursLater * 3_600_000;
          try {
            const { person, left, waitMs, isEarly } = await tryPin(2, pin);
            return person ? [-1, -1] : [left, isEarly ? 0 : waitMs / 1000];
          } finally {
            Date.now = real;
          }
        }
        """;
}
