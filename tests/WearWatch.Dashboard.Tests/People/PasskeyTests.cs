using System.Net;
using System.Text.Json;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Administration.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>
/// What is refused at the passkeys' door. That a real one lets in is shown in a browser (WearWatch.Browser.Tests).
/// </summary>
public sealed class PasskeyTests(StaffedPlant plant) : IClassFixture<StaffedPlant>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_question_for_a_new_passkey_names_the_person_and_asks_for_a_device_that_knows_him()
    {
        var answer = await AskAsync(plant.Technician, "/people/me", PasskeyDoor.New, Caller.Password);
        var question = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(Ct)).RootElement;
        Assert.Equal("Bea", question.GetProperty("user").GetProperty("name").GetString());
        var device = question.GetProperty("authenticatorSelection");
        Assert.Equal("required", device.GetProperty("userVerification").GetString());
        Assert.Equal("required", device.GetProperty("residentKey").GetString());
    }

    [Theory]
    [InlineData("a wrong password", "The present password is not right.")]
    [InlineData("", "The present password is not right.")]
    public async Task Without_the_present_password_no_passkey_is_offered(string password, string told)
    {
        var answer = await AskAsync(plant.Reader, "/people/me", PasskeyDoor.New, password);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(told, await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PasskeyDoor.New)]
    [InlineData(PasskeyDoor.Use)]
    public async Task A_form_without_its_token_gets_no_question(string door)
    {
        var answer =
            await plant.Technician.Http.PostAsync(door, new FormUrlEncodedContent([new("Form.Password", Caller.Password)]), Ct);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.DoesNotContain("challenge", await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_is_not_signed_in_gets_no_question_for_a_new_passkey()
    {
        using var nobody = new Caller(plant.Host);
        var answer = await AskAsync(nobody, "/people/sign-in", PasskeyDoor.New, Caller.Password);
        Assert.Equal("/people/sign-in", answer.Headers.Location!.AbsolutePath);
    }

    [Theory]
    [InlineData(false)] // nobody asked
    [InlineData(true)] // asked, and answered with what fits nothing
    public async Task An_invented_answer_signs_nobody_in(bool asked)
    {
        using var caller = new Caller(plant.Host);
        if (asked) Assert.Contains("challenge", await (await AskAsync(caller, "/people/sign-in", PasskeyDoor.Use, "")).Content
            .ReadAsStringAsync(Ct), StringComparison.Ordinal);
        var text = await (await caller.SendFormAsync(
            "/people/sign-in", "sign-in", ("Form.Answer", """{"id":"AQID","rawId":"AQID","type":"public-key"}""")))
            .Content.ReadAsStringAsync(Ct);
        Assert.Contains(SignInWords.PasskeyUnknown.ToString(), text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Unauthorized, (await caller.Http.GetAsync("/api/v1/me", Ct)).StatusCode);
    }

    [Theory]
    [InlineData("Phone", "not JSON")]
    [InlineData("", "{}")]
    public async Task An_invented_answer_makes_no_passkey(string name, string answer)
    {
        await AskAsync(plant.Technician, "/people/me", PasskeyDoor.New, Caller.Password);
        var text = await (await plant.Technician
            .SendFormAsync("/people/me", "passkey", ("Form.Name", name), ("Form.Answer", answer))).Content.ReadAsStringAsync(Ct);
        Assert.Contains(name.Length == 0 ? "Give the passkey a name" : "No passkey was made", text, StringComparison.Ordinal);
        await using var db = await plant.Host.OpenAsync();
        Assert.False(await db.Set<IdentityUserPasskey<int>>().AnyAsync(Ct));
    }

    [Fact]
    public async Task An_answer_to_the_question_for_signing_in_makes_no_passkey()
    {
        await AskAsync(plant.Technician, "/people/me", PasskeyDoor.Use, "");
        var answer = await plant.Technician.SendFormAsync(
            "/people/me", "passkey", ("Form.Name", "Phone"),
            ("Form.Answer", """{"id":"AQID","rawId":"AQID","type":"public-key","response":{}}"""));
        Assert.Contains("No passkey was made", await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    private static async Task<HttpResponseMessage> AskAsync(Caller caller, string page, string door, string password) =>
        await caller.Http.PostAsync(door, new FormUrlEncodedContent(
            [new("__RequestVerificationToken", await caller.TokenOfAsync(page)), new("Form.Password", password),
                new("Form.Name", "Phone")]), Ct);
}
