using System.Net;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Mailing;
using WearWatch.Plant.Notices;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>Who leaves the company or its provider is out here, and who leaves here is out there.</summary>
public sealed class CompanyLeaveTests : IAsyncLifetime
{
    private readonly CompanyMill mill = new();

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => mill.StartAsync();

    public ValueTask DisposeAsync() => mill.DisposeAsync();

    [Fact]
    public async Task Who_leaves_the_directory_is_out_at_once_and_comes_in_by_nothing_else()
    {
        mill.Provider.Accounts["22"] = new("Pia Lund", "plund", "chain-crew");
        using var pia = new CompanyCaller(mill.Plant);
        await pia.ComeInAsync("22");
        var set = await pia.Caller.SendFormAsync("/people/me", "pin", ("Form.Pin", "4711"), ("Form.Again", "4711"));
        Assert.Contains("Set. Every other device", await set.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        Assert.NotNull((await mill.PersonAsync("22")).PinHash);
        await pia.ComeInAsync("22");
        mill.Provider.Accounts.TryRemove("22", out var account);
        await CompanyMill.UntilAsync(async () => (await pia.Http.GetAsync("/chains", Ct)).StatusCode == HttpStatusCode.Redirect);
        await using (var scope = mill.Plant.Services.CreateAsyncScope())
        {
            Assert.Empty(await scope.ServiceProvider.GetRequiredService<PinDesk>().AskAsync(Ct));
            // Nor is a notice given or mailed to somebody who has left.
            var notices = scope.ServiceProvider.GetRequiredService<NoticeStepDesk>();
            Assert.Equal(["Ada"], await notices.PeopleAsync(Ct));
            Assert.Empty(await MailedToAsync(scope.ServiceProvider, "Pia Lund"));
            Assert.NotEmpty(await MailedToAsync(scope.ServiceProvider, "Ada"));
        }

        var page = $"/people/{(await mill.PersonAsync("22")).Id}";
        await mill.Ada.SendFormAsync(page, "reset", ("Reset.Password", "a chain of links"));
        using var byPassword = new Caller(mill.Plant);
        var refused = await byPassword.SignInAsync("Pia Lund", "a chain of links");
        Assert.Contains("does not vouch for you any more", await refused.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        mill.Provider.Accounts["22"] = account!;
        Assert.Equal("/", await pia.ComeInAsync("22"));
    }

    [Fact]
    public async Task A_group_that_is_taken_away_counts_without_a_new_sign_in()
    {
        mill.Provider.Accounts["23"] = new("Tom Weir", "tweir", "planning");
        using var tom = new CompanyCaller(mill.Plant);
        await tom.ComeInAsync("23");
        mill.Provider.Accounts["23"] = mill.Provider.Accounts["23"] with { Groups = ["chain-crew"] };
        await CompanyMill.UntilAsync(async () => (await mill.PersonAsync("23")).Roles == PersonRoles.Technician);
        await tom.ComeInAsync("23");
        mill.Provider.Accounts["23"] = mill.Provider.Accounts["23"] with { Groups = [] };
        await CompanyMill.UntilAsync(async () => (await tom.Http.GetAsync("/chains", Ct)).StatusCode == HttpStatusCode.Redirect);
    }

    [Fact]
    public async Task The_provider_ends_the_session_that_it_names_and_nobody_else_does()
    {
        mill.Provider.Accounts["24"] = new("Ed Voss", "evoss", "chain-crew");
        using var desk = new CompanyCaller(mill.Plant);
        using var phone = new CompanyCaller(mill.Plant);
        await desk.ComeInAsync("24");
        await phone.ComeInAsync("24");
        var sid = await mill.FirstSessionAsync();
        using var outside = mill.Plant.CreateClient(new() { AllowAutoRedirect = false });
        foreach (var forged in new[] { "", "x.y.z", mill.Provider.LogoutToken(sid, "another program") })
        {
            Assert.Equal(HttpStatusCode.BadRequest, (await SayAsync(outside, forged)).StatusCode);
        }

        Assert.Equal(HttpStatusCode.OK, (await SayAsync(outside, mill.Provider.LogoutToken(sid))).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await desk.Http.GetAsync("/chains", Ct)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await phone.Http.GetAsync("/chains", Ct)).StatusCode);
    }

    [Fact]
    public async Task Signing_out_here_leads_to_the_provider_and_back()
    {
        mill.Provider.Accounts["25"] = new("Lea Kern", "lkern", "chain-crew");
        using var lea = new CompanyCaller(mill.Plant);
        await lea.ComeInAsync("25");
        await lea.Caller.SendFormAsync("/people/me", "sign-out");
        Assert.Equal(HttpStatusCode.Redirect, (await lea.Http.GetAsync("/chains", Ct)).StatusCode);
        const string left = "/people/sign-in?left=true", next = "data-leave-next";
        Assert.Contains(next, await lea.Http.GetStringAsync(left, Ct), StringComparison.Ordinal);
        Assert.Equal("http://localhost/people/sign-in", await lea.LeaveAsync());
        Assert.DoesNotContain(next, await lea.Http.GetStringAsync(left, Ct), StringComparison.Ordinal);
        // The provider has forgotten too: it asks for the account again.
        Assert.Contains("Mill sign-in", await lea.AskedAtProviderAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task While_the_provider_is_away_the_page_says_so_and_sessions_stand()
    {
        mill.Provider.Accounts["26"] = new("Uma Frey", "ufrey", "chain-crew");
        using var uma = new CompanyCaller(mill.Plant);
        await uma.ComeInAsync("26");
        await mill.Provider.DisposeAsync();
        await Task.Delay(500, Ct);
        Assert.Equal(HttpStatusCode.OK, (await uma.Http.GetAsync("/chains", Ct)).StatusCode);
        using var late = new DashboardHost();
        await using var young = CompanyMill.Of(late, mill.Provider);
        using var newcomer = new Caller(young);
        await newcomer.SetUpAsync();
        var away = await newcomer.Http.GetAsync("/people/company", Ct);
        Assert.Equal("/people/sign-in?company=away", away.Headers.Location!.OriginalString);
        using var nobody = new Caller(young);
        Assert.Contains(
            "does not answer", await nobody.Http.GetStringAsync(away.Headers.Location, Ct), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_disconnected_person_needs_a_password()
    {
        mill.Provider.Accounts["27"] = new("Ben Amsel", "bamsel", "chain-crew");
        using var ben = new CompanyCaller(mill.Plant);
        await ben.ComeInAsync("27");
        var page = $"/people/{(await mill.PersonAsync("27")).Id}";
        Assert.DoesNotContain("Save the roles", await mill.Ada.Http.GetStringAsync(page, Ct), StringComparison.Ordinal);
        await mill.Ada.SendFormAsync(page, "disconnect");
        Assert.Equal(HttpStatusCode.Redirect, (await ben.Http.GetAsync("/chains", Ct)).StatusCode);
        await mill.Ada.SendFormAsync(page, "reset", ("Reset.Password", "a chain of links"));
        using var local = new Caller(mill.Plant);
        Assert.Equal(HttpStatusCode.Redirect, (await local.SignInAsync("Ben Amsel", "a chain of links")).StatusCode);
    }

    /// <summary>The mails that are due to a person who wishes each notice at once, when one was just raised.</summary>
    private async Task<IReadOnlyList<PersonRow>> MailedToAsync(IServiceProvider services, string name)
    {
        await using var db = await mill.OpenAsync();
        var person = await db.People.SingleAsync(p => p.UserName == name, Ct);
        db.MailWishes.Add(new() { PersonId = person.Id, Address = "a@mill.example", Rhythm = MailRhythm.AtOnce });
        db.Chains.Add(new() { Name = $"CHAIN {name}", PitchMm = 25.4 });
        await db.SaveChangesAsync(Ct);
        var chain = await db.Chains.SingleAsync(c => c.Name == $"CHAIN {name}", Ct);
        db.Notices.Add(new()
        {
            ChainId = chain.Id,
            Kind = NoticeKind.LimitNear,
            Urgent = true,
            RaisedAt = TimeProvider.System.GetUtcNow(),
            Why = $"The limit is near.",
            WhatToDo = $"Plan the swap.",
        });
        await db.SaveChangesAsync(Ct);
        var due = await services.GetRequiredService<MailDesk>().DueAsync(Ct);
        return [.. due.Select(d => d.Person).Where(p => p.Id == person.Id)];
    }

    private static Task<HttpResponseMessage> SayAsync(HttpClient outside, string token) => outside.PostAsync(
        "/people/company/signed-out", new FormUrlEncodedContent([new("logout_token", token)]), Ct);
}
