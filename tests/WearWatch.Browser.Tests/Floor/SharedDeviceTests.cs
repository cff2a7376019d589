using System.Text.Json;
using Microsoft.Data.Sqlite;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// Two people and one phone, at a plant whose people sign in: the second takes it over by PIN without signal, and signs in
/// afterwards although the first is still signed in.
/// </summary>
public sealed class SharedDeviceTests(Screen screen)
{
    private const string Password = "twelve links of chain";
    private const string First = "a first word for Ben";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_was_entered_by_PIN_goes_under_the_session_of_that_person_and_ends_the_one_before()
    {
        await using var server = new ServerProcess();
        await server.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        var chains = await server.TakeInAsync(client, "SHARED"); // open to the own machine until somebody is set up
        await using (var desk = await screen.AtDeskAsync(address: server.Address)) await AddPeopleAsync(desk.Page, server);

        await using var phone = await screen.OnPhoneAsync(address: server.Address);
        var page = phone.Page;
        await page.GotoAsync(server.Address + "/people/sign-in?back=/floor/");
        await SignInAsync(page, "Ben", Password);
        await page.ReadyAsync();
        await page.SetPinAsync("5093");
        await ChangeToAsync(page, "Ada");
        await Assertions.Expect(page.Locator("#who")).ToHaveTextAsync("A");

        await page.Context.SetOfflineAsync(true);
        await page.ChoosePersonAsync("Ben");
        await page.TypePinAsync("5093");
        await Assertions.Expect(page.Locator("#who")).ToHaveTextAsync("B");
        await page.MeasureAsync(chains[0].Id, "5000", "1234.5");
        await page.Context.SetOfflineAsync(false);
        await page.ShowAsync("#/kept");
        await page.GetByRole(AriaRole.Button, new() { Name = "Send 1 now" }).TapAsync();
        await Assertions.Expect(page.GetByText("These wait for Ben")).ToBeVisibleAsync();
        Assert.Equal("Ada", await EnteredByAsync(page));
        await page.Locator("#net").GetByRole(AriaRole.Link, new() { Name = "Ben signs in, then it is sent" }).TapAsync();
        await SignInAsync(page, "Ben", Password);
        await Assertions.Expect(page.Locator("#kept")).ToHaveTextAsync("Kept 0");
        var told = await page.EvaluateAsync<JsonElement>(
            "chain => fetch(`/api/v1/chains/${chain}/readings`).then(answer => answer.json())", chains[0].Name);
        Assert.Equal("Ben", told.EnumerateArray().Last().GetProperty("told_by").GetString());
        Assert.Equal(["Ada", "Ben"], await EndedAsync(server));
        await phone.PictureAsync("floor-shared-phone", whole: false);
    }

    private static async Task ChangeToAsync(IPage page, string name)
    {
        await page.Locator("#who").TapAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Sign in", Exact = true }).TapAsync();
        await SignInAsync(page, name, Password);
        await page.ReadyAsync();
    }

    private static async Task SignInAsync(IPage page, string name, string password)
    {
        await page.GetByLabel("Your name").FillAsync(name);
        await page.GetByLabel("Password").FillAsync(password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in", Exact = true }).ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("/people/sign-in", StringComparison.Ordinal));
    }

    /// <summary>Whom the server sees at this browser.</summary>
    private static Task<string> EnteredByAsync(IPage page) =>
        page.EvaluateAsync<string>("() => fetch('/api/v1/me').then(answer => answer.json()).then(me => me.name)");

    private static async Task AddPeopleAsync(IPage page, ServerProcess server)
    {
        await page.GotoAsync(server.Address + "/people/first");
        await page.GetByLabel("Code of the console").FillAsync(await server.Code);
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByLabel("Password").FillAsync(Password);
        await page.GetByLabel("The same again").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Set up" }).ClickAsync();
        await page.WaitForURLAsync("**/people/me");
        await page.GotoAsync(server.Address + "/people");
        await page.GetByLabel("Name", new() { Exact = false }).First.FillAsync("Ben");
        await page.GetByLabel("First password").FillAsync(First);
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("Ben can sign in now.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Ben", Exact = true }).ClickAsync();
        await page.Locator("label.tick:has(strong:text-is('technician')) input").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the roles" }).ClickAsync();
        await Assertions.Expect(page.GetByText("The roles are saved, and count at once.")).ToBeVisibleAsync();
        await page.Context.ClearCookiesAsync();
        await page.GotoAsync(server.Address + "/people/sign-in");
        await SignInAsync(page, "Ben", First);
        var own = page.Locator("form", new() { HasText = "New password" });
        await own.GetByLabel("Present password").FillAsync(First);
        await own.GetByLabel("New password").FillAsync(Password);
        await own.GetByLabel("The same again").FillAsync(Password);
        await own.GetByRole(AriaRole.Button).Last.ClickAsync();
        await Assertions.Expect(page.GetByText("Changed. Every other device has to sign in anew.")).ToBeVisibleAsync();
    }

    /// <summary>Whose sessions at the phone were ended, in that order of names.</summary>
    private static async Task<List<string>> EndedAsync(ServerProcess server)
    {
        await using var db = new SqliteConnection($"Data Source={server.Database};Mode=ReadOnly");
        await db.OpenAsync(Ct);
        await using var command = db.CreateCommand();
        command.CommandText = "SELECT DISTINCT p.Name FROM Sessions s JOIN People p ON p.Id = s.PersonId "
            + "WHERE s.EndedAt IS NOT NULL ORDER BY p.Name";
        List<string> names = [];
        await using var rows = await command.ExecuteReaderAsync(Ct);
        while (await rows.ReadAsync(Ct)) names.Add(rows.GetString(0));
        return names;
    }
}
