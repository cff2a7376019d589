using System.Reflection;
using WearWatch.Chains;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>
/// The table of projects in docs/architecture.md: dependencies point inward, and packages stay where they are needed.
/// </summary>
public sealed class ProjectTests
{
    private static readonly string[] Hosting = ["Microsoft.EntityFrameworkCore", "Microsoft.Extensions"];

    /// <summary>
    /// A project, what of ours it may refer to, and the beginnings of the names of the packages that it may use.
    /// </summary>
    private static readonly Dictionary<string, (string[] Own, string[] Packages)> Table = new()
    {
        ["WearWatch"] = ([], ["MathNet.Numerics"]),
        ["WearWatch.SensorSim"] = ([], []),
        ["WearWatch.Learning"] = (["WearWatch"], ["Microsoft.ML", "MathNet.Numerics"]),
        ["WearWatch.Planning"] = (["WearWatch"], ["Google.OrTools", "Google.Protobuf", "Ical.Net", "NodaTime"]),
        ["WearWatch.Storage"] = (["WearWatch"], [.. Hosting, "Microsoft.Data.Sqlite", "Npgsql", "InfluxDB"]),
        ["WearWatch.Plant"] = (
            ["WearWatch", "WearWatch.Learning", "WearWatch.Planning", "WearWatch.Storage"],
            [.. Hosting, "CsvHelper", "Google.Protobuf", "Microsoft.AspNetCore.Identity", "MiniExcel", "zxcvbn-core"]),
        ["WearWatch.Worker"] = (
            ["WearWatch", "WearWatch.Learning", "WearWatch.Planning", "WearWatch.Storage", "WearWatch.Plant",
                "WearWatch.SensorSim"],
            [.. Hosting, "CsvHelper", "MailKit", "MimeKit", "MQTTnet", "OpenTelemetry", "Quartz", "Spectre.Console",
                "System.CommandLine"]),
        ["WearWatch.Dashboard"] = (
            ["WearWatch", "WearWatch.Learning", "WearWatch.Planning", "WearWatch.Storage", "WearWatch.Plant",
                "WearWatch.SensorSim", "WearWatch.Worker"],
            [.. Hosting, "Microsoft.AspNetCore", "Microsoft.IdentityModel", "Microsoft.JSInterop",
                "Microsoft.OpenApi", "Microsoft.Net.Http.Headers",
                "Parquet", "PdfSharp", "QRCoder", "Radzen.Blazor", "SpreadCheetah"]),
    };

    public static TheoryData<string> Projects => [.. TypeGraph.Ours.Select(a => a.GetName().Name!)];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_refers_only_to_what_the_table_allows(string project)
    {
        var (own, packages) = Table[project];
        string[] others =
        [
            .. TypeGraph.Ours.Single(a => a.GetName().Name == project).GetReferencedAssemblies().Select(a => a.Name!)
                .Where(name => !IsOfTheFramework(name) && !own.Contains(name))
                .Where(name => IsOurs(name) || !packages.Any(p => name.StartsWith(p, StringComparison.Ordinal)))
        ];
        Assert.True(others.Length == 0, $"{project} refers to {string.Join(", ", others)}.");
    }

    [Fact]
    public void Every_project_stands_in_the_picture_for_newcomers()
    {
        var text = File.ReadAllText(Path.Combine(SourceTree.Root, "docs", "architecture.md"));
        Assert.All(Table.Keys, project => Assert.Contains($"/{project}` |", text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_domain_neither_waits_nor_reads_files()
    {
        var methods = typeof(ChainCard).Assembly.GetTypes().Where(t => t.IsPublic)
            .SelectMany(t =>
                t.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly));
        Assert.DoesNotContain(methods, m => typeof(Task).IsAssignableFrom(m.ReturnType));
        Assert.DoesNotContain(
            TypeGraph.Ours.Single(a => a == typeof(ChainCard).Assembly).GetReferencedAssemblies(),
            a => a.Name!.StartsWith("System.IO", StringComparison.Ordinal));
    }

    private static bool IsOurs(string name) => name.StartsWith("WearWatch", StringComparison.Ordinal);

    private static bool IsOfTheFramework(string name) =>
        name is "mscorlib" or "netstandard" or "Microsoft.CSharp"
        || (name.StartsWith("System.", StringComparison.Ordinal)
            && !name.StartsWith("System.CommandLine", StringComparison.Ordinal));
}
