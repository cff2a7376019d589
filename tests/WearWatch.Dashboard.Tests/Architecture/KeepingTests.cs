using System.Reflection;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>The dashboard draws: what is kept, the plant's library keeps.</summary>
public sealed class KeepingTests
{
    private static readonly string[] Rows = ["Add", "Update", "Remove", "Attach", "SaveChanges"];
    private static readonly string[] Sets = ["ExecuteUpdate", "ExecuteDelete", "ExecuteSql", "BeginTransaction", "Migrate"];

    private static readonly string[] People =
        ["Add", "Update", "Remove", "Set", "Create", "Delete", "Change", "Reset", "Replace", "Access", "Redeem"];

    private static readonly Assembly dashboard = typeof(Program).Assembly;

    [Fact]
    public void The_dashboard_writes_the_database_nowhere_itself()
    {
        var writes =
            from type in dashboard.GetTypes()
            from called in Code.CallsOf(type)
            where Writes(called)
            select $"{type.FullName} calls {called.DeclaringType!.Name}.{called.Name}";
        Assert.Empty(writes.Distinct());
    }

    // Were the names of the framework's methods others, the test above could not fail.
    [Fact]
    public void What_writes_is_known_by_its_name_as_the_plants_library_uses_it()
    {
        var used = typeof(WearWatch.Plant.PlantServices).Assembly.GetTypes().SelectMany(Code.CallsOf).Where(Writes)
            .Select(m => m.Name).ToHashSet();
        Assert.Superset(
            new HashSet<string>
            {
                "Add", "AddRange", "SaveChangesAsync", "SaveChanges", "ExecuteUpdateAsync", "ExecuteDeleteAsync",
                "BeginTransactionAsync", "AddOrUpdatePasskeyAsync", "RemovePasskeyAsync", "UpdateAsync", "CreateAsync",
            },
            used);
    }

    private static bool Writes(MethodBase called)
    {
        if (called.DeclaringType is not { } on) return false;
        if (typeof(DbContext).IsAssignableFrom(on) || Is(on, typeof(DbSet<>))) return Begins(Rows);
        if (Is(on, typeof(UserManager<>)) || Is(on, typeof(IUserStore<>))) return Begins(People);
        return on.Namespace?.StartsWith("Microsoft.EntityFrameworkCore", StringComparison.Ordinal) == true && Begins(Sets);

        bool Begins(string[] names) => names.Any(n => called.Name.StartsWith(n, StringComparison.Ordinal));
    }

    private static bool Is(Type type, Type open) => type.IsGenericType && type.GetGenericTypeDefinition() == open;
}
