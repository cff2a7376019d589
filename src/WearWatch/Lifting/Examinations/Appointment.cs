using WearWatch.Chains;

namespace WearWatch.Lifting.Examinations;

/// <summary>A person's appointment to examine and release lifting chains. No role of a sign-in stands in for it.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Person">The person's name.</param>
/// <param name="Line">The line to which it is bound; empty for all.</param>
/// <param name="Family">The kind of chain to which it is bound, by name; empty for all that lift.</param>
/// <param name="From">The first day on which it holds.</param>
/// <param name="Until">The last day on which it holds.</param>
public sealed record Appointment(
    int Id, string Person, string Line, string Family, DateOnly From, DateOnly Until)
{
    /// <summary>The day on which it was ended before its time; null when it was not.</summary>
    public DateOnly? EndedOn { get; init; }

    /// <summary>Whether it holds on a day.</summary>
    public bool HoldsOn(DateOnly day) => From <= day && day <= Until && !(EndedOn <= day);

    /// <summary>Whether it lets the person examine and release a chain on a day.</summary>
    public bool Covers(string person, ChainCard card, DateOnly day) =>
        HoldsOn(day) && string.Equals(Person, person.Trim(), StringComparison.OrdinalIgnoreCase)
        && (Line.Length == 0 || Line == card.Line) && (Family.Length == 0 || Family == card.Family.Name);
}
