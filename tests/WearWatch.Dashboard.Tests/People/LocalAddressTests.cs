using WearWatch.Dashboard.Kit.Pages;

namespace WearWatch.Dashboard.Tests.People;

public sealed class LocalAddressTests
{
    [Theory]
    [InlineData("//elsewhere.example")]
    [InlineData("https://elsewhere.example")]
    [InlineData("/\\elsewhere.example")]
    [InlineData("/\t/elsewhere.example")]
    [InlineData(null)]
    public void Nobody_is_led_to_another_site(string? back) => Assert.Equal("/", LocalAddress.Of(back));
}
