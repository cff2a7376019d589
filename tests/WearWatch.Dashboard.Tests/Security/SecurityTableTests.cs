using System.Text.RegularExpressions;
using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>The table of docs/security.md names tests that are there.</summary>
public sealed partial class SecurityTableTests
{
    [Fact]
    public async Task Every_test_that_the_table_names_is_there()
    {
        var text = await File.ReadAllTextAsync(
            Path.Combine(SourceTree.Root, "docs", "security.md"), TestContext.Current.CancellationToken);
        var named = TestName().Matches(text).Select(m => m.Groups[1].Value).Distinct().ToList();
        Assert.True(named.Count > 20);
        var there = Directory.EnumerateFiles(Path.Combine(SourceTree.Root, "tests"), "*Tests.cs", SearchOption.AllDirectories)
            .Select(Path.GetFileNameWithoutExtension).ToHashSet();
        Assert.DoesNotContain(named, n => !there.Contains(n));
    }

    [GeneratedRegex(@"`(\w+Tests)`")]
    private static partial Regex TestName();
}
