using System.Net;
using System.Net.Http.Headers;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>Keys of machines: made once on a page, good for what they were given, gone when withdrawn.</summary>
public sealed partial class KeyTests(StaffedPlant plant) : IClassFixture<StaffedPlant>
{
    private const string Reading = """{"chain":"K-1","counter_h":3200,"tool":"tape","pitches":48,"length":"1231.4"}""";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_machine_enters_under_the_name_of_its_key_until_the_key_is_withdrawn()
    {
        using var machine = await MachineAsync("Bench 2", "1");
        Assert.Equal(HttpStatusCode.Created, (await machine.TellAsync("/api/v1/readings", Reading, "bench-1")).StatusCode);
        await using var db = await plant.Host.OpenAsync();
        Assert.Equal("Bench 2 (key)", (await db.Readings.SingleAsync(r => r.Key == "bench-1", Ct)).ToldBy);
        var id = (await db.ApiKeys.SingleAsync(k => k.Name == "Bench 2", Ct)).Id;
        await plant.Administrator.SendFormAsync("/people/api-keys", "withdraw", ("Gone.Id", $"{id}"));
        var answer = await machine.TellAsync("/api/v1/readings", Reading, "bench-2");
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.Contains("withdrawn", await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        Assert.False(await db.Readings.AnyAsync(r => r.Key == "bench-2", Ct));
    }

    [Fact]
    public async Task A_key_without_a_role_reads_only_and_none_administers()
    {
        using var machine = await MachineAsync("Wall screen");
        Assert.Equal(HttpStatusCode.OK, (await machine.Http.GetAsync("/api/v1/chains", Ct)).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await machine.TellAsync("/api/v1/readings", Reading, "screen")).StatusCode);
        var refused =
            await plant.Administrator.SendFormAsync("/people/api-keys", "make", ("Form.Name", "Robot"), ("Form.Roles", "8"));
        Assert.Contains("does not administer", await refused.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_forged_key_is_refused_and_a_technician_makes_none()
    {
        using var machine = new Caller(plant.Host);
        machine.Http.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", "ww_" + new string('A', 43));
        Assert.Equal(
            HttpStatusCode.Unauthorized, (await machine.TellAsync("/api/v1/readings", Reading, "forged key")).StatusCode);
        Assert.Equal(
            "/people/refused", (await plant.Technician.Http.GetAsync("/people/api-keys", Ct)).Headers.Location!.AbsolutePath);
        await using var db = await plant.Host.OpenAsync();
        Assert.False(await db.Readings.AnyAsync(r => r.Key == "forged key", Ct));
    }

    private async Task<Caller> MachineAsync(string name, params string[] roles)
    {
        var page = await plant.Administrator.SendFormAsync(
            "/people/api-keys", "make", [("Form.Name", name), .. roles.Select(r => ("Form.Roles", r))]);
        var key = Key().Match(await page.Content.ReadAsStringAsync(Ct)).Value;
        // shown once
        Assert.DoesNotContain(
            key, await plant.Administrator.Http.GetStringAsync("/people/api-keys", Ct), StringComparison.Ordinal);
        var machine = new Caller(plant.Host);
        machine.Http.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", key);
        return machine;
    }

    [GeneratedRegex("ww_[A-Za-z0-9_-]{43}")]
    private static partial Regex Key();
}
