using WearWatch.Chains;

namespace WearWatch.Plant.Intake;

/// <summary>An event of a file that can be, by itself.</summary>
/// <param name="Line">Its line.</param>
/// <param name="Event">What happened.</param>
/// <param name="Fingerprint">By which it is known again.</param>
/// <param name="Remarks">What is said about its file.</param>
/// <param name="By">Who told it.</param>
internal sealed record FileEvent(int Line, ChainEvent Event, string Fingerprint, RemarkList Remarks, string By)
{
    /// <summary>Whether something of it can be held against what was read before: its counter, or which chain it was.</summary>
    public bool CanBeAskedAbout => Event.Kind == ChainEventKind.Replacement || Event.CounterBefore is not null
        || Event.CounterAfter is not null;
}
