using System.Net;
using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>People come in with the accounts of their company, by a real OpenID provider.</summary>
public sealed class CompanySignInTests : IAsyncLifetime
{
    private readonly CompanyMill mill = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => mill.StartAsync();

    public ValueTask DisposeAsync() => mill.DisposeAsync();

    [Fact]
    public async Task The_first_sign_in_makes_the_person_and_the_groups_say_what_the_person_may_do()
    {
        mill.Provider.Accounts["17"] = new("Jan \u0160tern (mill)", "jstern", "chain-crew", "choir");
        using var jan = new CompanyCaller(mill.Plant);
        Assert.Equal("/chains", await jan.ComeInAsync("17", "/chains"));
        Assert.Equal(HttpStatusCode.OK, (await jan.Http.GetAsync("/people/me", Ct)).StatusCode);
        var person = await mill.PersonAsync("17");
        Assert.Equal(("Jan \u0160tern mill", PersonRoles.Technician), (person.UserName, person.Roles));
        mill.Provider.Accounts["17"] = mill.Provider.Accounts["17"] with { Groups = ["planning"] };
        using var elsewhere = new CompanyCaller(mill.Plant);
        await elsewhere.ComeInAsync("17");
        var now = await mill.PersonAsync("17");
        Assert.Equal((person.Id, PersonRoles.Technician | PersonRoles.Planner), (now.Id, now.Roles));
    }

    [Fact]
    public async Task Who_is_in_none_of_the_groups_does_not_come_in()
    {
        mill.Provider.Accounts["18"] = new("Ola Berg", "oberg", "choir");
        using var ola = new CompanyCaller(mill.Plant);
        var answer = await ola.TryAsync("18");
        var said = await answer.Content.ReadAsStringAsync(Ct);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Contains("in no group that may use WearWatch", said, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Redirect, (await ola.Http.GetAsync("/chains", Ct)).StatusCode);
        await using var db = await mill.OpenAsync();
        Assert.Equal("Ada", Assert.Single(await db.People.ToListAsync(Ct)).UserName);
    }

    [Fact]
    public async Task A_name_with_a_password_is_not_taken_over_but_connected_by_its_person()
    {
        using var local = await mill.Ada.AddAsync("Mia Rost", (int)PersonRoles.Technician);
        mill.Provider.Accounts["19"] = new("Mia Rost", "mrost", "planning");
        using var stranger = new CompanyCaller(mill.Plant);
        var refused = await stranger.TryAsync("19");
        Assert.Contains("Mia Rost has a password here", await refused.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        using var mia = new CompanyCaller(mill.Plant, local);
        Assert.Contains("Connect the account", await mia.Http.GetStringAsync("/people/me", Ct), StringComparison.Ordinal);
        Assert.Equal("/people/me", await mia.ComeInAsync("19", connect: true));
        Assert.Contains("you sign in with it", await mia.Http.GetStringAsync("/people/me", Ct), StringComparison.Ordinal);
        using var phone = new CompanyCaller(mill.Plant);
        await phone.ComeInAsync("19");
        Assert.Equal("Mia Rost", (await mill.PersonAsync("19")).UserName);
        Assert.Equal(PersonRoles.Technician | PersonRoles.Planner, (await mill.PersonAsync("19")).Roles);
    }

    [Fact]
    public async Task Two_people_of_one_name_are_two()
    {
        mill.Provider.Accounts["20"] = new("Kim Holm", "kholm", "chain-crew");
        mill.Provider.Accounts["21"] = new("Kim Holm", "kholm2", "visitors");
        using var one = new CompanyCaller(mill.Plant);
        using var other = new CompanyCaller(mill.Plant);
        await one.ComeInAsync("20");
        await other.ComeInAsync("21");
        Assert.Equal("Kim Holm", (await mill.PersonAsync("20")).UserName);
        Assert.Equal("Kim Holm kholm2", (await mill.PersonAsync("21")).UserName);
        Assert.Equal(PersonRoles.None, (await mill.PersonAsync("21")).Roles);
    }
}
