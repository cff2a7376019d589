namespace WearWatch.Dashboard.Engineer.Workbench;

/// <summary>Words that several calculations share.</summary>
public static class BenchWords
{
    private const string List = "docs/references.md ";

    /// <summary>A source, its place in the list of references in the person's language.</summary>
    public static string Source(string source) => source.StartsWith(List, StringComparison.Ordinal)
        ? T[$"source {source[List.Length..]}"]
        : source;
}
