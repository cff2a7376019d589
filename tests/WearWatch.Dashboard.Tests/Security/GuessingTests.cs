using System.Net;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Dashboard.Tests.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>Passwords are not guessed, and who guesses keeps nobody out (OWASP ASVS 5, V6.3; NIST SP 800-63B, 3.2.2).</summary>
public sealed class GuessingTests : IAsyncLifetime
{
    private readonly MovedClock clock = new();
    private readonly DashboardHost host;
    private Caller ada = null!;

    public GuessingTests() => host = new DashboardHost { Clock = clock };

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        ada = new Caller(host);
        await ada.SetUpAsync();
    }

    public async ValueTask DisposeAsync()
    {
        ada.Dispose();
        await host.DisposeAsync();
    }

    [Theory]
    [InlineData("Ada")]
    [InlineData("Nobody at all")]
    public async Task Of_many_wrong_passwords_at_once_five_are_looked_at_whether_the_name_exists_or_not(string name)
    {
        var answers = await Task.WhenAll(Enumerable.Range(0, 24).Select(i => TryAsync(name, $"a wrong password {i}")));
        Assert.Equal(SignInTries.FreeForAccount, answers.Count(a => a.Fault == SignInWords.Wrong));
        Assert.Equal(19, answers.Count(a => a.Fault.ToString().StartsWith("Too many wrong tries", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Each_miss_doubles_the_wait_up_to_a_quarter_of_an_hour()
    {
        double[] waits = [.. Enumerable.Range(1, 16).Select(n =>
            SignInTries.DelayAfter(n, SignInTries.FreeForAccount).TotalSeconds)];
        Assert.Equal([0, 0, 0, 0, 2, 4, 8, 16, 32, 64, 128, 256, 512, 900, 900, 900], waits);
        for (var i = 0; i < 5; i++) await TryAsync("Ada", "a wrong password");
        Assert.Null((await TryAsync("Ada", Caller.Password)).Person);
        clock.MoveOn(TimeSpan.FromSeconds(2));
        Assert.NotNull((await TryAsync("Ada", Caller.Password)).Person);
    }

    [Fact]
    public async Task A_changing_forwarded_address_is_no_way_around_the_count()
    {
        using var caller = new Caller(host);
        var told = "";
        for (var i = 0; i < 7; i++)
        {
            caller.Http.DefaultRequestHeaders.Remove("X-Forwarded-For");
            caller.Http.DefaultRequestHeaders.Add("X-Forwarded-For", $"192.0.2.{i}");
            told = await (await caller.SignInAsync("Ada", "a wrong password")).Content.ReadAsStringAsync(Ct);
        }

        Assert.Contains("Too many wrong tries", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stranger_who_guesses_keeps_a_person_out_of_no_device_that_the_person_came_in_from()
    {
        using var own = new Caller(host);
        await own.SignInAsync("Ada");
        await own.SendFormAsync("/people/me", "sign-out");
        using var stranger = new Caller(host);
        for (var i = 0; i < 8; i++) await stranger.SignInAsync("Ada", "a wrong password");
        Assert.Equal(HttpStatusCode.OK, (await stranger.SignInAsync("Ada")).StatusCode); // the page again: wait
        Assert.Equal(HttpStatusCode.Found, (await own.SignInAsync("Ada")).StatusCode);
    }

    [Fact]
    public async Task A_clock_that_was_set_back_keeps_nobody_out_for_longer()
    {
        for (var i = 0; i < 12; i++)
        {
            await TryAsync("Ada", "a wrong password");
            clock.MoveOn(TimeSpan.FromMinutes(15));
        }

        clock.MoveOn(TimeSpan.FromHours(-5));
        Assert.NotNull((await TryAsync("Ada", Caller.Password)).Person);
    }

    // The first three are those of the review; the others lead published lists of common passwords (from memory).
    [Theory]
    [InlineData("password123")]
    [InlineData("1234512345")]
    [InlineData("Bea LutzBea Lutz")]
    [InlineData("qwertyuiop")]
    [InlineData("iloveyou123")]
    [InlineData("wearwatch2026")]
    public async Task A_password_that_is_guessed_first_is_refused(string password)
    {
        await ada.SendFormAsync("/people", "add", ("Form.Name", "Bea Lutz"), ("Form.Roles", "1"), ("Form.Password", password));
        Assert.DoesNotContain(">Bea Lutz<", await ada.Http.GetStringAsync("/people", Ct), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("twelve links of chain")]
    [InlineData("zwölf Kettenglieder am Montag")]
    public async Task Words_that_do_not_belong_together_are_taken_without_rules_of_composition(string password)
    {
        await ada.SendFormAsync("/people", "add", ("Form.Name", "Bea Lutz"), ("Form.Roles", "1"), ("Form.Password", password));
        Assert.Contains("Bea Lutz", await ada.Http.GetStringAsync("/people", Ct), StringComparison.Ordinal);
    }

    private async Task<SignInDesk.Answer> TryAsync(string name, string password)
    {
        await using var scope = host.Services.CreateAsyncScope();
        return await scope.ServiceProvider.GetRequiredService<SignInDesk>().TryAsync(name, password, _ => null, Ct);
    }
}
