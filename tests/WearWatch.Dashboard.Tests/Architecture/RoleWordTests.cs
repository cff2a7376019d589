using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>A type's ending says what it is for: the table "Role words of the code" in docs/vocabulary.md, held.</summary>
public sealed partial class RoleWordTests
{
    private static readonly string[] PaperFolders = ["Kit.Paper", "Technician.Labels", "Technician.Rounds"];

    private static readonly string[] Writes =
        ["SaveChanges", "SaveChangesAsync", "ExecuteUpdate", "ExecuteUpdateAsync", "ExecuteDelete", "ExecuteDeleteAsync"];

    /// <summary>What must be true of each type with the ending. An ending without a line here is not in the table.</summary>
    private static readonly Dictionary<string, Func<Type, bool>> Rules = new()
    {
        ["Row"] = type => type.Namespace == "WearWatch.Storage.Rows",
        ["Desk"] = type => type.Namespace!.StartsWith("WearWatch.Plant.", StringComparison.Ordinal),
        ["Query"] = type => type.GetMethod("AskAsync") is not null && !ChangesTheDatabase(type),
        ["View"] = IsRecord,
        ["Answer"] = type => type.IsAbstract && IsRecord(type),
        ["Outcome"] = type => type.IsEnum || type.IsAbstract && IsRecord(type),
        ["Json"] = type => IsRecord(type) || type.BaseType?.Name == "JsonSerializerContext",
        ["Command"] = type => IsStatic(type) && (type.GetMethod("Make") ?? type.GetMethod("RunAsync")) is not null,
        ["Services"] = type => IsStatic(type) && type.GetMethods().Any(m => m.Name.StartsWith("Add", StringComparison.Ordinal)),
        ["Page"] = type => IsComponent(type) && (type.IsAbstract || type.IsDefined(typeof(RouteAttribute), inherit: false)),
        ["Panel"] = type => IsComponent(type) && !type.IsDefined(typeof(RouteAttribute), inherit: false),
        ["Form"] = type => type.Assembly == typeof(Program).Assembly,
        ["Words"] = IsStatic,
        ["Text"] = type => !IsComponent(type) && type.Namespace != "WearWatch.Storage.Rows",
        ["Sheet"] = type => PaperFolders.Any(folder => type.Namespace!.EndsWith(folder, StringComparison.Ordinal)),
        ["Board"] = type => type.Namespace!.EndsWith(".Boards", StringComparison.Ordinal),
        ["Record"] = type => type.Namespace is "WearWatch.Lives" or "WearWatch.Dashboard.Engineer.Record",
    };

    public static TheoryData<string> Endings => [.. Rules.Keys];

    [Fact]
    public void Every_ending_of_the_table_has_a_rule_and_every_rule_stands_in_the_table()
    {
        var vocabulary = File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "vocabulary.md"));
        var table = vocabulary[vocabulary.IndexOf("## Role words", StringComparison.Ordinal)..];
        var endings = Ending().Matches(table).Select(m => m.Groups[1].Value);
        Assert.Equal(Rules.Keys.Order(StringComparer.Ordinal), endings.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Endings))]
    public void A_type_with_the_ending_is_what_the_ending_says(string ending)
    {
        var types = TypeGraph.Whole.Types.Where(t => NameOf(t).EndsWith(ending, StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(types);
        Assert.Empty(types.Where(t => !Rules[ending](t)).Select(t => t.FullName));
    }

    [Fact]
    public void A_query_that_wrote_would_be_found() =>
        Assert.Contains(TypeGraph.Whole.Types, t => t.Name.EndsWith("Desk", StringComparison.Ordinal) && ChangesTheDatabase(t));

    private static string NameOf(Type type) => type.Name.Split('`')[0];

    private static bool ChangesTheDatabase(Type type) =>
        Code.CallsOf(type).Any(call => Writes.Contains(call.Name)
            && call.DeclaringType?.Namespace?.StartsWith(typeof(DbContext).Namespace!, StringComparison.Ordinal) == true)
        || type.GetNestedTypes(System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.NonPublic)
            .Any(ChangesTheDatabase);

    private static bool IsRecord(Type type) => type.GetMethod("<Clone>$") is not null
        || type.IsValueType && type.GetInterfaces().Any(i => i.Name == "IEquatable`1");

    private static bool IsStatic(Type type) => type is { IsAbstract: true, IsSealed: true };

    private static bool IsComponent(Type type) => typeof(IComponent).IsAssignableFrom(type);

    [GeneratedRegex(@"^\| `(\w+)` \|", RegexOptions.Multiline)]
    private static partial Regex Ending();
}
