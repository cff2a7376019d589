namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>The usings of a file stand in order: System first, then by name; static ones and other names last.</summary>
public sealed class UsingTests
{
    [Fact]
    public void Usings_stand_in_order()
    {
        string[] faults =
        [
            .. from file in SourceTree.Files(SourceTree.All, ".cs")
               let usings = Usings(file)
               where !usings.SequenceEqual(usings.Order(InOrder))
               select Path.GetRelativePath(SourceTree.Root, file),
        ];
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    [Theory]
    [InlineData("System", "Apple")]
    [InlineData("System.Text", "Microsoft.Extensions")]
    [InlineData("WearWatch.Chains", "WearWatch.Chains.Links")]
    [InlineData("Microsoft.Extensions", "static System.Math")]
    [InlineData("static System.Math", "Column = System.Int32")]
    public void What_comes_before_what(string first, string second) => Assert.True(InOrder.Compare(first, second) < 0);

    private static Comparer<string> InOrder { get; } = Comparer<string>.Create((a, b) =>
    {
        var byPlace = PlaceOf(a).CompareTo(PlaceOf(b));
        return byPlace != 0 ? byPlace : string.Compare(a, b, StringComparison.OrdinalIgnoreCase);
    });

    private static int PlaceOf(string used) =>
        used.Contains('=', StringComparison.Ordinal) ? 3
        : used.StartsWith("static ", StringComparison.Ordinal) ? 2
        : used == "System" || used.StartsWith("System.", StringComparison.Ordinal) ? 0 : 1;

    private static List<string> Usings(string file) =>
    [
        .. File.ReadLines(file)
            .TakeWhile(l => !l.StartsWith("namespace", StringComparison.Ordinal))
            .Where(l => l.StartsWith("using ", StringComparison.Ordinal) && l.EndsWith(';'))
            .Select(l => l["using ".Length..^1]),
    ];
}
