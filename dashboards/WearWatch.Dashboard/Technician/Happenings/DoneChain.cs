using WearWatch.Chains;
using WearWatch.Lubrication;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Storage;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Technician.Happenings;

/// <summary>What the page knows of the chain at which something was done.</summary>
/// <param name="Raw">What was told of it.</param>
/// <param name="Assessment">What is concluded of it.</param>
/// <param name="Calendar">When it runs.</param>
/// <param name="EarlyDate">The planner's date as it stands; null when the limit is not in sight.</param>
/// <param name="Oiling">When it is to be oiled, or its oiler looked at.</param>
/// <param name="Time">Now.</param>
public sealed record DoneChain(
    RawChain Raw, Assessment Assessment, ProductionCalendar Calendar, DateTimeOffset? EarlyDate, OilingDue Oiling, PlantTime Time)
{
    public string Name => Raw.Card.Name;

    /// <summary>The chains that run together with it.</summary>
    public IReadOnlyList<string> Mates { get; init; } = [];

    public ChainCard Card => Raw.Card;

    /// <summary>What the hour counter should show by the calendar; null when no count was ever told.</summary>
    public double? CounterNowH => HourCounter.At(Time.Now, Raw.Readings, Raw.Events, Calendar)?.Hours;

    /// <summary>The newest count that was told: by its date, and where there is none the one told last.</summary>
    public double? LastCounterH => Raw.Readings.Select(r => (At: r.TakenAt, Count: r.Counter))
        .Concat(Raw.Events.Select(e => (e.At, Count: e.CounterAfter ?? e.CounterBefore)))
        .Where(c => c.Count is not null)
        .OrderBy(c => c.At ?? DateTimeOffset.MinValue)
        .LastOrDefault().Count?.Hours;

    /// <summary>
    /// Pitches of the chain that runs now: those on the card without those taken out since; null when not on the card.
    /// </summary>
    public int? PitchesNow => Card.Pitches - Shortening.PitchesOut(Raw.Events);
}
