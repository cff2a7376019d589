using System.Net;
using Microsoft.AspNetCore.Mvc.Testing;

namespace WearWatch.Dashboard.Tests.People;

/// <summary>A browser without a screen that goes to the company's OpenID provider and comes back.</summary>
public sealed class CompanyCaller(WebApplicationFactory<Program> plant, Caller? caller = null) : IDisposable
{
    private readonly HttpClient outside = new(new HttpClientHandler { AllowAutoRedirect = false });

    public Caller Caller { get; } = caller ?? new(plant);

    public HttpClient Http => Caller.Http;

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>Signs in with an account; where that leads to.</summary>
    public async Task<string> ComeInAsync(string account, string back = "/", bool connect = false)
    {
        var answer = await TryAsync(account, back, connect);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return answer.Headers.Location!.OriginalString;
    }

    /// <summary>Signs in with an account; what the plant answers in the end.</summary>
    public async Task<HttpResponseMessage> TryAsync(string account, string back = "/", bool connect = false)
    {
        var asked = await outside.GetAsync(await SetOutAsync(back, connect), Ct);
        if (asked.StatusCode == HttpStatusCode.OK)
        {
            var request = asked.RequestMessage!.RequestUri!;
            var login = new Uri(request, $"/login?account={account}&back={Uri.EscapeDataString(request.PathAndQuery)}");
            var known = await outside.GetAsync(login, Ct);
            asked = await outside.GetAsync(new Uri(request, known.Headers.Location!), Ct);
        }

        Assert.Equal(HttpStatusCode.Redirect, asked.StatusCode);
        var came = await Http.GetAsync(asked.Headers.Location, Ct);
        Assert.Equal(HttpStatusCode.Redirect, came.StatusCode);
        return await Http.GetAsync(came.Headers.Location, Ct);
    }

    /// <summary>What the provider shows to somebody who sets out to sign in.</summary>
    public async Task<string> AskedAtProviderAsync() =>
        await (await outside.GetAsync(await SetOutAsync("/", connect: false), Ct)).Content.ReadAsStringAsync(Ct);

    /// <summary>Signs out at the provider; where that leads to.</summary>
    public async Task<string> LeaveAsync()
    {
        var there = (await Http.GetAsync("/people/company/leave", Ct)).Headers.Location!;
        Assert.True(there.IsAbsoluteUri, $"{there} is no address of a provider.");
        return (await outside.GetAsync(there, Ct)).Headers.Location!.OriginalString;
    }

    public void Dispose()
    {
        outside.Dispose();
        Caller.Dispose();
    }

    private async Task<Uri> SetOutAsync(string back, bool connect)
    {
        var page = await Http.GetAsync(
            connect ? "/people/company?connect=true" : "/people/company?back=" + Uri.EscapeDataString(back), Ct);
        return page.Headers.Location!;
    }
}
