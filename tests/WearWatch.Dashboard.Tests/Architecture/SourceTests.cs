namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>How the source is laid out, as .editorconfig and DEVELOPERS.md say.</summary>
public sealed class SourceTests
{
    private const int LongestLine = 130;
    private const int LongestFile = 200;

    [Fact]
    public void No_line_is_longer_than_130_characters() => Nothing(
        from file in SourceTree.Files(SourceTree.All, ".cs", ".razor", ".js", ".css")
        from line in File.ReadLines(file).Index()
        where line.Item.Length > LongestLine
        select $"{Path.GetRelativePath(SourceTree.Root, file)}:{line.Index + 1} has {line.Item.Length}");

    [Fact]
    public void No_file_is_longer_than_200_lines() => Nothing(
        from file in SourceTree.Files(SourceTree.All, ".cs", ".razor", ".js", ".css")
        let lines = File.ReadLines(file).Count()
        where lines > LongestFile
        select $"{Path.GetRelativePath(SourceTree.Root, file)} has {lines}");

    private static void Nothing(IEnumerable<string> found)
    {
        string[] faults = [.. found.Order(StringComparer.Ordinal)];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }
}
