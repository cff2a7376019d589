using System.Text.Json;
using System.Xml.Linq;
using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Security;

/// <summary>What is shipped is under licences that docs/decisions.md and NOTICES.md allow.</summary>
public sealed class LicenceTests
{
    private static readonly string[] free = ["MIT", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "MS-PL", "PostgreSQL", "0BSD"];

    private static readonly string packages = Environment.GetEnvironmentVariable("NUGET_PACKAGES")
        ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");

    [Fact]
    public async Task Every_package_that_is_shipped_has_a_free_licence_or_is_named_in_the_notices()
    {
        var ct = TestContext.Current.CancellationToken;
        var notices = await File.ReadAllTextAsync(Path.Combine(SourceTree.Root, "NOTICES.md"), ct);
        await using var file =
            File.OpenRead(Path.Combine(SourceTree.Root, "dashboards", "WearWatch.Dashboard", "packages.lock.json"));
        using var locks = await JsonDocument.ParseAsync(file, cancellationToken: ct);
        var shipped = locks.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(f => f.Value.EnumerateObject())
            .Where(p => p.Value.GetProperty("type").GetString() != "Project")
            .Select(p => (p.Name, Version: p.Value.GetProperty("resolved").GetString()!)).Distinct().ToList();
        Assert.True(shipped.Count > 50);
        Assert.Empty(shipped
            .Where(p => !IsFree(p.Name, p.Version) && !notices.Contains(p.Name, StringComparison.OrdinalIgnoreCase))
            .Select(p => $"{p.Name} {p.Version}: {LicenceOf(p.Name, p.Version)}"));
    }

    private static bool IsFree(string name, string version) =>
        LicenceOf(name, version) is { Length: > 0 } said && said.Split(" OR ").Any(one => free.Contains(one.Trim('(', ')', ' ')));

    private static string? LicenceOf(string name, string version)
    {
        var id = name.ToLowerInvariant();
        var path = Path.Combine(packages, id, version.ToLowerInvariant(), id + ".nuspec");
        if (!File.Exists(path)) return null;
        return XDocument.Load(path).Descendants().FirstOrDefault(e =>
            e.Name.LocalName == "license" && e.Attribute("type")?.Value == "expression")?.Value;
    }
}
