using System.Text.RegularExpressions;
using WearWatch.Chains.Families;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>What differs by the kind of chain stands with the kind: nobody else names one or decides by which it is.</summary>
/// <remarks>
/// Two families may be compared with each other (a filter, a key); one may not be compared with a name. The simulator is a
/// plant of its own that knows nothing of the domain, and is not looked at.
/// </remarks>
public sealed partial class FamilyTests
{
    /// <summary>Words that are names of kinds and mean something else here: a file and the word.</summary>
    private static readonly (string File, string Word)[] OtherMeanings =
    [
        ("ChainType.cs", "custom"), // the standard of a chain that none describes
        ("sketch.js", "roller"), // a part of the drawing
    ];

    private static string[] Sources { get; } =
        [.. SourceTree.Files(["src", "dashboards"], ".cs", ".razor", ".js").Where(file => !IsOfFamilies().IsMatch(file))];

    public static TheoryData<string> Names => [.. ChainFamily.All.Select(family => family.Name)];

    [Fact]
    public void The_sources_are_looked_at() => Assert.True(Sources.Length > 400, $"{Sources.Length} files.");

    [Theory]
    [MemberData(nameof(Names))]
    public void No_source_outside_the_families_names_a_kind_of_chain(string name)
    {
        var type = ChainFamily.Named(name).GetType().Name;
        var named = new Regex($"""(["'`]){Regex.Escape(name)}\1|\b{type}\b""");
        Assert.Empty(Lines(named, file => OtherMeanings.Contains((Path.GetFileName(file), name))));
    }

    [Fact]
    public void No_source_outside_the_families_switches_on_a_kind_of_chain() => Assert.Empty(Lines(Switch(), _ => false));

    [Theory]
    [InlineData("family switch")]
    [InlineData("card.Family.Name switch")]
    [InlineData("chain.family === 'x'")]
    [InlineData("if (card.Family.Name == name)")]
    [InlineData("switch (card.Family)")]
    public void A_decision_by_the_kind_is_recognised(string line) => Assert.Matches(Switch(), line);

    private static IEnumerable<string> Lines(Regex wrong, Func<string, bool> isLeftOut) =>
        from file in Sources
        where !isLeftOut(file)
        from line in File.ReadLines(file)
        where wrong.IsMatch(line)
        select $"{Path.GetRelativePath(SourceTree.Root, file)}: {line.Trim()}";

    [GeneratedRegex(@"[\\/]Chains[\\/]Families[\\/]")]
    private static partial Regex IsOfFamilies();

    [GeneratedRegex(
        @"\b[Ff]amily(\.Name)?\s+switch\b|switch\s*\([^)]*\b[Ff]amily(\.Name)?\)|\b[Ff]amily\.Name\s*[=!]=|"
        + @"\bfamily\s*[=!]==?\s*['""`]|\b[Ff]amily\s+is\s+(not\s+)?[""A-Z]")]
    private static partial Regex Switch();
}
