namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>
/// The folders of a project build on each other in one direction. What lies at its root belongs to all of them.
/// </summary>
public sealed class FolderTests
{
    [Theory]
    [InlineData("WearWatch")]
    [InlineData("WearWatch.Dashboard")]
    [InlineData("WearWatch.Learning")]
    [InlineData("WearWatch.Planning")]
    [InlineData("WearWatch.Plant")]
    [InlineData("WearWatch.SensorSim")]
    [InlineData("WearWatch.Storage")]
    [InlineData("WearWatch.Worker")]
    public void No_folders_of_a_project_refer_to_each_other_in_a_circle(string project)
    {
        var links = Links(project);
        var below = links.ToDictionary(l => l.Key, l => Below(l.Key, links));
        string[] circles = [.. links.SelectMany(l =>
            l.Value.Where(to => below[to.Key].Contains(l.Key)).Select(to => $"{l.Key} > {to.Key}: {to.Value}")).Order()];
        Assert.True(circles.Length == 0, "In a circle:\n" + string.Join('\n', circles));
    }

    /// <summary>For each folder the folders to which it refers, each with one reference as an example.</summary>
    private static Dictionary<string, Dictionary<string, string>> Links(string project)
    {
        var types = TypeGraph.Whole.Types.Where(t => t.Assembly.GetName().Name == project && FolderOf(t).Length > 0).ToArray();
        var links = types.Select(FolderOf).Distinct().ToDictionary(f => f, _ => new Dictionary<string, string>());
        foreach (var type in types.OrderBy(t => t.FullName, StringComparer.Ordinal))
        {
            foreach (var used in TypeGraph.Whole.Of(type)
                .Where(t => t.Assembly == type.Assembly && FolderOf(t) is { Length: > 0 } to && to != FolderOf(type)))
                links[FolderOf(type)].TryAdd(FolderOf(used), $"{type.Name} uses {used.Name}");
        }

        return links;
    }

    private static HashSet<string> Below(string folder, Dictionary<string, Dictionary<string, string>> links)
    {
        HashSet<string> found = [];
        var ahead = new Queue<string>([folder]);
        while (ahead.TryDequeue(out var next))
        {
            foreach (var to in links[next].Keys.Where(found.Add)) ahead.Enqueue(to);
        }

        return found;
    }

    private static string FolderOf(Type type)
    {
        var inside = type.Namespace is { } space && space.Length > type.Assembly.GetName().Name!.Length
            ? space[(type.Assembly.GetName().Name!.Length + 1)..]
            : "";
        return inside.Split('.')[0];
    }
}
