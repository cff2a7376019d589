using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Dashboard.Administration.People;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>A browser without a screen: keeps cookies, reads a form's token and sends the form.</summary>
public sealed partial class Caller(WebApplicationFactory<Program> host) : IDisposable
{
    public const string Password = "twelve links of chain";

    public HttpClient Http { get; } = host.CreateClient(new() { AllowAutoRedirect = false });

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>Fills a form of a page; the answer is the page after it, or where it leads to.</summary>
    public async Task<HttpResponseMessage> SendFormAsync(string path, string form, params (string Field, string Value)[] fields)
    {
        var page = await Http.GetStringAsync(path, Ct);
        return await SendFormAsync(path, form, Token().Match(page).Groups[1].Value, fields);
    }

    /// <summary>Fills a form with a token that was read before.</summary>
    public Task<HttpResponseMessage> SendFormAsync(
        string path, string form, string token, params (string Field, string Value)[] fields) =>
        Http.PostAsync(path, new FormUrlEncodedContent(
            [new("_handler", form), new("__RequestVerificationToken", token),
                .. fields.Select(f => KeyValuePair.Create(f.Field, f.Value))]), Ct);

    public async Task<string> TokenOfAsync(string path) => Token().Match(await Http.GetStringAsync(path, Ct)).Groups[1].Value;

    /// <summary>Sets the plant's first administrator up and stays signed in as that.</summary>
    public Task<HttpResponseMessage> SetUpAsync(string name = "Ada") => SendFormAsync(
        "/people/first", "first", ("Form.Code", Code), ("Form.Name", name), ("Form.Password", Password),
        ("Form.Again", Password));

    /// <summary>The code of the console.</summary>
    public string Code => host.Services.GetRequiredService<SetUpCode>().Text;

    public Task<HttpResponseMessage> SignInAsync(string name, string password = Password) =>
        SendFormAsync("/people/sign-in", "sign-in", ("Form.Name", name), ("Form.Password", password));

    /// <summary>Adds a person who has chosen an own password, and comes back as that person.</summary>
    public async Task<Caller> AddAsync(string name, int roles)
    {
        await SendFormAsync("/people", "add",
            [("Form.Name", name), ("Form.Password", "given by another"), .. Bits(roles).Select(b => ("Form.Roles", b))]);
        var person = new Caller(host);
        await person.SignInAsync(name, "given by another");
        await person.SendFormAsync(
            "/people/me", "password", ("Form.Old", "given by another"), ("Form.New", Password), ("Form.Again", Password));
        return person;
    }

    public Task<HttpResponseMessage> TellAsync(string path, string body, string key)
    {
        var request = new HttpRequestMessage(
            HttpMethod.Post, path)
        { Content = new StringContent(body, Encoding.UTF8, "application/json") };
        request.Headers.Add("Idempotency-Key", key);
        return Http.SendAsync(request, Ct);
    }

    public void Dispose() => Http.Dispose();

    private static IEnumerable<string> Bits(int roles) =>
        Enumerable.Range(0, 4).Select(i => 1 << i).Where(b => (roles & b) != 0).Select(b => $"{b}");

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
