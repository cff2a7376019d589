using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Lifting;
using WearWatch.Plant.Register;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>Who may do what with a chain that lifts: roles write, and none of them releases; an appointment does.</summary>
public sealed class LiftingRolesTests(StaffedPlant plant) : IClassFixture<StaffedPlant>
{
    private const string Path = "/api/v1/lifting/MAST-1";
    private const string Why = """{"reason":"looked at it"}""";
    private const string Release = """{"reason":"dirt, no crack","closes":["cracked_or_turned_parts"]}""";
    private const string Look = """{"chain":"MAST-1","findings":[{"point":"cracked_or_turned_parts","found":true,"note":""}]}""";

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_administrator_with_all_roles_releases_nothing_and_an_appointed_technician_does_under_the_own_name()
    {
        await plant.Host.Get<RegisterDesk>().AddAsync(
            new ChainCard { Name = "MAST-1", Family = ChainFamily.Named("leaf"), PitchMm = 19.05 }, "Vera", ct: Ct);
        using var planner = await plant.Administrator.AddAsync("Pia", 1 | 2 | 4 | 8);
        Assert.Equal(HttpStatusCode.Forbidden, (await plant.Reader.TellAsync(Path + "/quarantine", Why, "q0")).StatusCode);
        Assert.Equal(HttpStatusCode.Created, (await plant.Technician.TellAsync("/api/v1/inspections", Look, "l1")).StatusCode);
        Assert.Equal("out_of_use", await VerdictAsync());

        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await planner.TellAsync(Path + "/release", Release, "r1")).StatusCode);
        Assert.Equal(
            HttpStatusCode.UnprocessableEntity, (await plant.Technician.TellAsync(Path + "/release", Release, "r2")).StatusCode);
        Assert.IsType<IntakeAnswer.Taken>(await plant.Host.Get<AppointmentDesk>().AppointAsync(new AppointmentRow
        {
            Person = "Bea",
            Qualification = "trained by the maker",
            From = new DateOnly(2020, 1, 1),
            Until = new DateOnly(2020, 1, 1).AddYears(5),
            AppointedBy = "Ada",
        }, Ct));
        Assert.Equal(
            HttpStatusCode.UnprocessableEntity, (await plant.Technician.TellAsync(Path + "/release", Release, "r3")).StatusCode);
        var today = DateOnly.FromDateTime(plant.Host.Get<TimeProvider>().GetUtcNow().DateTime);
        Assert.IsType<IntakeAnswer.Taken>(await plant.Host.Get<AppointmentDesk>().AppointAsync(new AppointmentRow
        {
            Person = "Bea",
            Qualification = "trained by the maker",
            From = today.AddDays(-1),
            Until = today.AddYears(1),
            AppointedBy = "Ada",
        }, Ct));
        // Nobody releases in the appointed person's name.
        Assert.Equal(HttpStatusCode.Forbidden, (await planner.TellAsync(
            Path + "/release", Release.Replace("{", """{"by":"Bea",""", StringComparison.Ordinal), "r4")).StatusCode);
        Assert.Equal(HttpStatusCode.Created, (await plant.Technician.TellAsync(Path + "/release", Release, "r5")).StatusCode);
        Assert.NotEqual("out_of_use", await VerdictAsync());

        var step = (await plant.Reader.Http.GetFromJsonAsync<JsonElement>(Path, Ct)).GetProperty("steps")[0];
        Assert.Equal(("released", "Bea", "dirt, no crack"), (
            step.GetProperty("kind").GetString(), step.GetProperty("by").GetString(), step.GetProperty("reason").GetString()));
        Assert.Equal(HttpStatusCode.Forbidden, (await EntryAsync(plant.Technician)).StatusCode);
        Assert.Equal(HttpStatusCode.Created, (await EntryAsync(planner)).StatusCode);
    }

    private async Task<string?> VerdictAsync() => (await plant.Reader.Http.GetFromJsonAsync<JsonElement>("/api/v1/lifting", Ct))
        .EnumerateArray().Single(c => c.GetProperty("chain").GetString() == "MAST-1").GetProperty("verdict").GetString();

    private static async Task<HttpResponseMessage> EntryAsync(Caller caller)
    {
        using var request = new HttpRequestMessage(HttpMethod.Put, Path + "/entry");
        request.Content = new StringContent("""{"use":"truck","certificate_number":"77"}""", Encoding.UTF8, "application/json");
        request.Headers.Add("Idempotency-Key", "entry");
        return await caller.Http.SendAsync(request, Ct);
    }
}
