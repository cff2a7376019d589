using WearWatch.Storage.Rows;

namespace WearWatch.Plant.People;

/// <summary>Roles in words, as they stand on screens, in the API and in a session.</summary>
public static class RoleWords
{
    /// <summary>The roles, each alone.</summary>
    public static IReadOnlyList<PersonRoles> Each { get; } =
        [PersonRoles.Technician, PersonRoles.Planner, PersonRoles.Engineer, PersonRoles.Administrator];

    /// <summary>All roles together.</summary>
    public static PersonRoles All { get; } = Each.Aggregate((all, role) => all | role);

    /// <summary>The word of each role that is set.</summary>
    public static IReadOnlyList<string> Of(PersonRoles roles) => [.. Each.Where(role => roles.HasFlag(role)).Select(One)];

    /// <summary>The roles of which these are words.</summary>
    public static PersonRoles Read(IEnumerable<string> words) =>
        Each.Where(role => words.Contains(One(role))).Aggregate(PersonRoles.None, (all, role) => all | role);

    /// <summary>All roles in one, such as <c>technician, planner</c>, for a person.</summary>
    public static Phrase List(PersonRoles roles) =>
        roles == PersonRoles.None ? $"reads only" : Phrase.Join(", ", Each.Where(role => roles.HasFlag(role)).Select(Name));

    /// <summary>What a role lets a person do.</summary>
    public static Phrase Explain(PersonRoles role) => role switch
    {
        PersonRoles.Technician => Phrase.Of($"enters readings and what was done"),
        PersonRoles.Planner => $"also keeps the register and plans swaps",
        PersonRoles.Engineer => $"also keeps the register and judges alarms",
        PersonRoles.Administrator => $"manages people, keys, tablets and settings",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "Explained is one role at a time."),
    };

    private static Phrase Name(PersonRoles role) => role switch
    {
        PersonRoles.Technician => Phrase.Of($"technician"),
        PersonRoles.Planner => $"planner",
        PersonRoles.Engineer => $"engineer",
        PersonRoles.Administrator => $"administrator",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "Named is one role at a time."),
    };

    private static string One(PersonRoles role) => role.ToString().ToLowerInvariant();
}
