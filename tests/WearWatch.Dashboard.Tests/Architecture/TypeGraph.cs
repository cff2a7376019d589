using System.Reflection;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>Which of our types refers to which, over all programs; a nested type counts as the one in which it stands.</summary>
internal sealed class TypeGraph
{
    private readonly Dictionary<Type, HashSet<Type>> references = [];

    private TypeGraph()
    {
        var all = Ours.SelectMany(a => a.GetTypes()).ToArray();
        foreach (var type in all)
        {
            var home = Home(type);
            if (!references.TryGetValue(home, out var known)) references[home] = known = [];
            known.UnionWith(Code.ReferencesOf(type).SelectMany(Parts).Where(t => Ours.Contains(t.Assembly)).Select(Home)
                .Where(t => t != home));
        }

        foreach (var (user, constants) in SourceTree.UsersOfConstants(references.Keys)) references[user].Add(constants);
    }

    /// <summary>The one graph: it takes some seconds.</summary>
    public static TypeGraph Whole { get; } = new();

    /// <summary>The assemblies of the dashboard and of all that it refers to.</summary>
    public static IReadOnlyList<Assembly> Ours => field ??= Reached(typeof(Program).Assembly);

    /// <summary>All types that somebody wrote.</summary>
    public IEnumerable<Type> Types => references.Keys.Where(IsWritten);

    /// <summary>What a type refers to, of those that somebody wrote.</summary>
    public IEnumerable<Type> Of(Type type) => references[type].Where(IsWritten);

    /// <summary>All types that can be reached from some.</summary>
    public IReadOnlySet<Type> ReachedFrom(IEnumerable<Type> roots)
    {
        var reached = roots.ToHashSet();
        var ahead = new Queue<Type>(reached);
        while (ahead.TryDequeue(out var type))
        {
            foreach (var next in references[type].Where(reached.Add)) ahead.Enqueue(next);
        }

        return reached;
    }

    private static bool IsWritten(Type type) =>
        !type.Name.StartsWith('<') && type.Name != "_Imports"
            && type.Namespace?.StartsWith("WearWatch", StringComparison.Ordinal) != false;

    private static List<Assembly> Reached(Assembly program)
    {
        List<Assembly> found = [program];
        for (var i = 0; i < found.Count; i++)
        {
            var names = found[i].GetReferencedAssemblies().Where(n => n.Name!.StartsWith("WearWatch", StringComparison.Ordinal));
            found.AddRange(names.Select(Assembly.Load).Except(found).ToArray());
        }

        return found;
    }

    private static Type Home(Type type)
    {
        while (type.DeclaringType is { } outer) type = outer;
        return type.IsGenericType ? type.GetGenericTypeDefinition() : type;
    }

    private static IEnumerable<Type> Parts(Type? type)
    {
        if (type is null || type.IsGenericParameter) return [];
        if (type.HasElementType) return Parts(type.GetElementType());
        return type.IsGenericType && !type.IsGenericTypeDefinition
            ? [type.GetGenericTypeDefinition(), .. type.GetGenericArguments().SelectMany(Parts)]
            : [type];
    }
}
