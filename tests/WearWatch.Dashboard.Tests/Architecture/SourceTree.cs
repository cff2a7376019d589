using System.Reflection;
using System.Text.RegularExpressions;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>The source files, found upwards from where the tests run.</summary>
internal static partial class SourceTree
{
    private static readonly string[] Programs = ["src", "dashboards", "sensor-sim"];

    /// <summary>The folders of everything that is written here: the programs and their tests.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Programs, "tests"];

    /// <summary>The folder of the solution.</summary>
    public static string Root { get; } = Above(AppContext.BaseDirectory);

    /// <summary>Files with one of these endings under folders of the repository, without what is built or bundled.</summary>
    public static IEnumerable<string> Files(IEnumerable<string> folders, params string[] endings) =>
        from folder in folders
        from file in Directory.EnumerateFiles(Path.Combine(Root, folder), "*", SearchOption.AllDirectories)
        where endings.Contains(Path.GetExtension(file))
            && !IsOthers().IsMatch(Path.GetRelativePath(Root, file).Replace('\\', '/'))
        select file;

    /// <summary>
    /// Who uses constants of whom: <c>Type.Constant</c> in the source, of which the compiled code keeps the value alone.
    /// </summary>
    public static IEnumerable<(Type User, Type Constants)> UsersOfConstants(IEnumerable<Type> types)
    {
        var byName = types.ToLookup(NameOf);
        var constants = byName.SelectMany(g => g).Where(HasConstants).ToLookup(NameOf);
        foreach (var file in Files(Programs, ".cs", ".razor"))
        {
            var name = Path.GetFileName(file).Split('.')[0];
            var text = File.ReadAllText(file);
            var space = Namespace().Match(text) is { Success: true } match ? match.Groups[1].Value : null;
            var users = byName[name].Where(t => space is null || t.Namespace == space).ToArray();
            foreach (var used in Word().Matches(text).Select(m => m.Value).Distinct())
            {
                foreach (var constant in constants[used])
                {
                    foreach (var user in users.Where(u => u != constant)) yield return (user, constant);
                }
            }
        }
    }

    private static bool HasConstants(Type type) =>
        !type.IsEnum && type.GetFields(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static)
            .Any(f => f.IsLiteral && !f.IsPrivate);

    private static string NameOf(Type type) => type.Name.Split('`')[0];

    private static string Above(string folder) => File.Exists(Path.Combine(folder, "WearWatch.sln"))
        ? folder
        : Above(Path.GetDirectoryName(folder)
            ?? throw new InvalidOperationException("The tests do not run inside the repository."));

    [GeneratedRegex(@"^\s*(?:@?namespace) ([\w.]+)", RegexOptions.Multiline)]
    private static partial Regex Namespace();

    [GeneratedRegex(@"\b[A-Z]\w*\b(?=\.[A-Z])")]
    private static partial Regex Word();

    [GeneratedRegex("(^|/)(bin|obj|artifacts|lib)/|Migrations/")]
    private static partial Regex IsOthers();
}
