using Microsoft.JSInterop;

namespace WearWatch.Dashboard.Shell;

/// <summary>The name under which a person's words are kept. It stays in the browser; nobody logs in here.</summary>
public sealed class Signature(IJSRuntime script)
{
    /// <summary>What stands for a person who gave no name.</summary>
    public const string Nobody = "dashboard";

    /// <summary>The name that this browser remembers.</summary>
    public async Task<string> NameAsync()
    {
        await using var module = await script.InvokeAsync<IJSObjectReference>("import", "./app.js");
        return await module.InvokeAsync<string?>("signature") is { Length: > 0 } name ? name : Nobody;
    }

    /// <summary>Remembers a name.</summary>
    public async Task SignAsync(string name)
    {
        await using var module = await script.InvokeAsync<IJSObjectReference>("import", "./app.js");
        await module.InvokeVoidAsync("sign", name.Trim());
    }
}
