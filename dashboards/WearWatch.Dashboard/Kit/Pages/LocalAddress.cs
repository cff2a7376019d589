namespace WearWatch.Dashboard.Kit.Pages;

/// <summary>Where to go back to after signing in: a page of this dashboard, never of another site.</summary>
public static class LocalAddress
{
    /// <summary>The address if it is one of ours, else the plant.</summary>
    public static string Of(string? back) =>
        back is ['/', ..] and not ['/', '/' or '\\', ..] && !back.Contains('\\') && !back.Any(char.IsControl) ? back : "/";
}
