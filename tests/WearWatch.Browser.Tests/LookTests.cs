namespace WearWatch.Browser.Tests;

public sealed class LookTests(BigMill mill, Walk walk) : IClassFixture<Walk>
{
    /// <summary>Address, name of the pictures, and what stands on the page once it is whole.</summary>
    public static TheoryData<string, string, string> Pages => new()
    {
        { "/", "glance", ".weeks" },
        { "/chains", "chains", ".chain-grid .chain-link" },
        { "/chains/LOOK-1", "chain", ".headline" },
        { "/enter", "enter", ".pick" },
        { "/notices", "notices", ".board" },
        { "/import", "import", ".drop" },
        { "/settings", "settings", ".settings" },
        { "/not-found", "not-found", ".blank" },
    };

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_page_stands_at_desk_and_on_the_phone_in_light_and_dark(string path, string name, string whole)
    {
        var address = await mill.OpenAsync();
        await PlantFiles.TakeInAsync(mill.Host.Services, "LOOK");
        foreach (var dark in new[] { false, true })
        {
            await using var desk = await walk.LookAsync(onPhone: false, dark, address);
            await CheckAsync(desk, path, whole, $"{name}-desk-{(dark ? "dark" : "light")}");
            await using var phone = await walk.LookAsync(onPhone: true, dark, address);
            await CheckAsync(phone, path, whole, $"{name}-phone-{(dark ? "dark" : "light")}");
        }
    }

    private static async Task CheckAsync(Visit visit, string path, string whole, string picture)
    {
        await visit.GoAsync(path);
        await visit.Page.Locator(whole).First.WaitForAsync();
        await visit.PictureAsync(picture);
        Assert.Equal("", await visit.OverTheEdgeAsync());
        Assert.Empty(visit.Complaints);
        Assert.Empty(await visit.BarriersAsync());
    }
}
