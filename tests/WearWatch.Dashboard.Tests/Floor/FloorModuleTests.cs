using System.Text.RegularExpressions;
using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Floor;

/// <summary>
/// What a script of the phone takes from another is there: a browser runs nothing of a script whose import is missing, and no
/// compiler says so.
/// </summary>
public sealed partial class FloorModuleTests
{
    private static readonly string Folder = Path.Combine(SourceTree.Root, "dashboards/WearWatch.Dashboard/wwwroot/floor");

    public static TheoryData<string> Scripts => [.. Directory.EnumerateFiles(Folder, "*.js").Select(f => Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Scripts))]
    public void Each_name_that_a_script_imports_is_exported(string script)
    {
        var missing = Import().Matches(Read(script)).SelectMany(import =>
        {
            var from = Read(import.Groups["file"].Value);
            return import.Groups["names"].Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Select(name => name.Split(' ')[0]).Except(Export().Matches(from).Select(e => e.Groups["name"].Value))
                .Select(name => $"{name} of {import.Groups["file"].Value}");
        });
        Assert.Empty(missing);
    }

    private static string Read(string script) => File.ReadAllText(Path.Combine(Folder, script));

    [GeneratedRegex(@"import\s*\{(?<names>[^}]*)\}\s*from\s*'\./(?<file>[^']+)'")]
    private static partial Regex Import();

    [GeneratedRegex(@"export\s+(?:async\s+)?(?:const|let|function\*?|class)\s+(?<name>\w+)")]
    private static partial Regex Export();
}
