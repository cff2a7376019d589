using WearWatch.Plant.People;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What can be a PIN is the same on a device and at the server.</summary>
public sealed class PinRuleTests(Screen screen)
{
    private readonly FloorPlant plant = new(screen);

    /// <summary>The server's own rule is the oracle: a PIN is chosen by the same one on both sides.</summary>
    [Fact]
    public async Task A_PIN_on_the_device_is_chosen_by_the_servers_rule()
    {
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        await phone.Page.ReadyAsync();
        string[] chosen = ["", "123", "1234", "8642", "1111", "12a4", "1235", "97531", "12345678", "28461973", "123456789"];
        foreach (var pin in chosen)
        {
            var told = await phone.Page.EvaluateAsync<string?>("""
                async pin => {
                  const [{ faultOf }, { t }] = await Promise.all([import('/floor/pin.js'), import('/floor/language.js')]);
                  const fault = faultOf(pin);
                  return fault && t(fault);
                }
                """, pin);
            Assert.Equal(Pin.Fault(pin)?.ToString(), told);
        }
    }
}
