namespace WearWatch.Dashboard.Kit.Language;

/// <summary>Brings <see cref="T"/> to every page and class of the screens, by a using for the whole project.</summary>
public static class Localized
{
    /// <summary>The texts: <c>T["Save plan"]</c>, <c>T[$"{count} chains"]</c>.</summary>
    public static Texts T { get; } = new();
}
