using System.Net;
using WearWatch.Dashboard.Tests.People;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>Who did what (OWASP ASVS 5, V16.3): on a page and as a file, for administrators only.</summary>
public sealed class SecurityLogTests : IAsyncLifetime
{
    private readonly StaffedPlant plant = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => plant.InitializeAsync();

    public ValueTask DisposeAsync() => plant.DisposeAsync();

    [Fact]
    public async Task Sign_ins_refusals_roles_and_keys_stand_in_the_log_with_who_did_it()
    {
        using var stranger = new Caller(plant.Host);
        await stranger.SignInAsync("Bea", "a wrong password");
        await plant.Administrator.SendFormAsync(
            "/people/api-keys", "make", ("Form.Name", "Weather mast"), ("Form.Roles", "1"));
        var log = await plant.Administrator.Http.GetStringAsync("/people/log.csv", Ct);
        Assert.Contains(",SetUp,", log, StringComparison.Ordinal);
        Assert.Contains(",PersonAdded,Ada,Bea (technician)", log, StringComparison.Ordinal);
        Assert.Contains(",SignedIn,Bea,", log, StringComparison.Ordinal);
        Assert.Contains(",SignInFailed,,Bea", log, StringComparison.Ordinal);
        Assert.Contains(",KeyMade,Ada,Weather mast (technician)", log, StringComparison.Ordinal);
        Assert.Contains(",Imported,Ina,readings.csv", log, StringComparison.Ordinal);
        Assert.Contains(",Exported,Ada,security log", log, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_shows_the_kind_that_was_chosen()
    {
        var all = await plant.Administrator.Http.GetStringAsync("/people/log", Ct);
        Assert.Contains("<td>person added</td>", all, StringComparison.Ordinal);
        Assert.Contains("<td>file imported</td>", all, StringComparison.Ordinal);
        var some = await plant.Administrator.Http.GetStringAsync("/people/log?kind=Imported", Ct);
        Assert.DoesNotContain("<td>person added</td>", some, StringComparison.Ordinal);
        Assert.Contains("<td>file imported</td>", some, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_kind_leaves_the_list_sorted_and_its_columns_hidden()
    {
        var page = await plant.Administrator.Http.GetStringAsync("/people/log?kind=&sort-table=-who&hide-table=about", Ct);
        var form = page[page.IndexOf("<search>", StringComparison.Ordinal)..page.IndexOf("</search>", StringComparison.Ordinal)];
        Assert.Contains("name=\"sort-table\" value=\"-who\"", form, StringComparison.Ordinal);
        Assert.Contains("name=\"hide-table\" value=\"about\"", form, StringComparison.Ordinal);
        Assert.Equal(1, form.Split("name=\"kind\"").Length - 1);
    }

    [Theory]
    [InlineData("/people/log")]
    [InlineData("/people/log.csv")]
    public async Task Nobody_but_an_administrator_reads_it(string path)
    {
        Assert.Equal(HttpStatusCode.Found, (await plant.Technician.Http.GetAsync(path, Ct)).StatusCode);
        using var stranger = new Caller(plant.Host);
        Assert.Equal(HttpStatusCode.Found, (await stranger.Http.GetAsync(path, Ct)).StatusCode);
    }
}
