using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.JSInterop;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Kit.People;

/// <summary>
/// The name under which a person's words are kept: the signed-in person's, or before anybody is set up the one that the browser
/// remembers.
/// </summary>
public sealed class Signature(IJSRuntime script, AuthenticationStateProvider people)
{
    /// <summary>The name under which words are kept now.</summary>
    public async Task<string> NameAsync()
    {
        if (await KnownAsync() is { } known) return known;
        await using var module = await script.InvokeAsync<IJSObjectReference>("import", "./app.js");
        return await module.InvokeAsync<string?>("signature") is { Length: > 0 } name ? name : PersonName.Nobody;
    }

    /// <summary>Signs: what is typed counts only while nobody is set up, and is remembered then.</summary>
    /// <param name="typed">The name that was typed.</param>
    /// <returns>The name to keep; empty for somebody who gave none.</returns>
    public async Task<string> SignAsync(string typed)
    {
        if (await KnownAsync() is { } known) return known;
        await using var module = await script.InvokeAsync<IJSObjectReference>("import", "./app.js");
        await module.InvokeVoidAsync("sign", typed.Trim());
        return typed.Trim();
    }

    /// <summary>Whether a planner signs.</summary>
    public async Task<bool> IsPlannerAsync() => (await people.GetAuthenticationStateAsync()).User.IsPlanner();

    private async Task<string?> KnownAsync()
    {
        var who = (await people.GetAuthenticationStateAsync()).User;
        if (who.Identity?.IsAuthenticated != true)
            throw new UnauthorizedAccessException("The session ended; nothing was stored.");
        return who.KeptName();
    }
}
