using System.Reflection;
using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.SensorSim;
using WearWatch.Storage;

namespace WearWatch.Worker.Tests;

/// <summary>Dependencies point inward: the worker knows learning and storage, these know the domain, the domain knows numerics only.</summary>
public sealed class ArchitectureTests
{
    public static TheoryData<Type, string[], string[]> Projects => new()
    {
        { typeof(ChainCard), [], ["MathNet.Numerics"] },
        { typeof(FleetModel), ["WearWatch"], ["Microsoft.ML", "MathNet.Numerics"] },
        { typeof(WearDb), ["WearWatch"], ["Microsoft.EntityFrameworkCore", "Microsoft.Data.Sqlite", "Microsoft.Extensions", "Npgsql", "InfluxDB"] },
        { typeof(Mill), [], [] },
        {
            typeof(DataFolder), ["WearWatch", "WearWatch.Learning", "WearWatch.Storage", "WearWatch.SensorSim"],
            ["Microsoft.EntityFrameworkCore", "Microsoft.Extensions", "CsvHelper", "MQTTnet", "OpenTelemetry", "Quartz", "Spectre.Console", "System.CommandLine"]
        },
    };

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_refers_only_to_what_lies_further_in(Type inside, string[] own, string[] packages)
    {
        foreach (var name in inside.Assembly.GetReferencedAssemblies().Select(a => a.Name!))
        {
            if (IsOfTheFramework(name)) continue;
            Assert.True(
                name.StartsWith("WearWatch", StringComparison.Ordinal) ? own.Contains(name) : packages.Any(p => name.StartsWith(p, StringComparison.Ordinal)),
                $"{inside.Assembly.GetName().Name} refers to {name}.");
        }
    }

    [Fact]
    public void The_domain_neither_waits_nor_reads_files()
    {
        var methods = typeof(ChainCard).Assembly.GetTypes().Where(t => t.IsPublic).SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly));
        Assert.DoesNotContain(methods, m => typeof(Task).IsAssignableFrom(m.ReturnType));
    }

    private static bool IsOfTheFramework(string name) =>
        name is "mscorlib" or "netstandard" || (name.StartsWith("System.", StringComparison.Ordinal) && !name.StartsWith("System.CommandLine", StringComparison.Ordinal))
        || name.StartsWith("Microsoft.CSharp", StringComparison.Ordinal);
}
