using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What a phone knew of the plant leaves with the person; what was not sent yet stays for its maker.</summary>
public sealed class LeaveTests(Screen screen)
{
    private const string Password = "twelve links of chain";

    [Fact]
    public async Task Signing_out_takes_the_pack_and_the_sent_entries_and_hides_the_others_from_whoever_comes_next()
    {
        await using var server = new ServerProcess();
        await server.StartAsync();
        await using var phone = await screen.OnPhoneAsync(address: server.Address);
        var page = phone.Page;
        await page.GotoAsync(server.Address + "/people/first");
        await page.GetByLabel("Code of the console").FillAsync(await server.Code);
        await page.GetByLabel("Your name").FillAsync("Ada");
        await page.GetByLabel("Password").FillAsync(Password);
        await page.GetByLabel("The same again").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Set up" }).ClickAsync();
        await page.WaitForURLAsync("**/people/me");
        await page.GotoAsync(server.Address + "/floor/");
        await page.ReadyAsync();
        await page.EvaluateAsync(
            """
            async () => {
              const store = await import('/floor/store.js');
              const entry = { kind: 'measure', chain: 'K-9', chainId: 9, at: new Date().toISOString(), words: 'secret length',
                path: '/api/v1/nowhere', method: 'POST', body: {}, maker: 1, by: 'Ada' };
              await store.keepEntry({ ...entry, id: 'a', state: 'sent' });
              await store.keepEntry({ ...entry, id: 'b', state: 'check', why: 'look again' });
              const { setPin } = await import('/floor/pin.js');
              await setPin({ id: 1, name: 'Ada' }, '2741');
              await setPin({ id: 2, name: 'Ben' }, '5093');
            }
            """);
        Assert.True(await HasPackAsync(page));
        await page.GotoAsync(server.Address + "/people/me");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out", Exact = true }).TapAsync();
        await page.WaitForURLAsync("**/people/sign-in?left=true");
        await page.WaitForFunctionAsync(
            "async () => (await (await import('/floor/store.js')).entries()).length === 1");
        Assert.False(await HasPackAsync(page));
        Assert.Equal("Ben", await page.EvaluateAsync<string>(
            "async () => (await (await import('/floor/pin.js')).holders()).map(each => each.name).join()"));

        await phone.Page.Context.SetOfflineAsync(true);
        await page.GotoAsync(server.Address + "/floor/#/kept");
        await Assertions.Expect(page.GetByText("An entry of Ada: sign in as that person")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("secret length")).ToHaveCountAsync(0);
    }

    private static Task<bool> HasPackAsync(IPage page) => page.EvaluateAsync<bool>(
        "async () => (await (await import('/floor/store.js')).value('pack')) !== undefined");
}
