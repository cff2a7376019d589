namespace WearWatch.Browser.Tests;

/// <summary>
/// The browsers of a class of tests that look at one page after the other: at a desk and on a phone, light and dark. Each is
/// opened once, so that it loads and reads scripts, styles and fonts once, as a person's does.
/// </summary>
public sealed class Walk(Screen screen) : IAsyncDisposable
{
    private readonly Dictionary<(bool OnPhone, bool Dark), Visit> open = [];

    /// <summary>A visit at a desk or on a phone; all visits of a class go to the same dashboard.</summary>
    public async Task<Visit> LookAsync(bool onPhone, bool dark, string? address = null)
    {
        if (!open.TryGetValue((onPhone, dark), out var first))
            open.Add((onPhone, dark), first = onPhone
                ? await screen.OnPhoneAsync(dark, address)
                : await screen.AtDeskAsync(dark, address));
        return await first.AgainAsync();
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var visit in open.Values) await visit.DisposeAsync();
    }
}
