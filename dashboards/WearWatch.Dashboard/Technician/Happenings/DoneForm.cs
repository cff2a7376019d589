using System.Globalization;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.People;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Technician.Happenings;

/// <summary>What a person says was done at a chain, as it was typed.</summary>
public sealed class DoneForm
{
    private DateTimeOffset? toldAt;

    /// <summary>What was done; null until it is chosen.</summary>
    public ChainEventKind? Kind { get; set; }

    /// <summary>The hour counter; of a counter that was changed, what it showed before.</summary>
    public string Counter { get; set; } = "";

    /// <summary>Of a counter that was changed, what it shows since.</summary>
    public string CounterAfter { get; set; } = "0";

    /// <summary>Of a shortening, whether the chains that run together with it were shortened with it.</summary>
    public bool WithGroup { get; set; } = true;

    /// <summary>Pitches taken out; two, so that no offset link is needed.</summary>
    public string PitchesOut { get; set; } = TypedNumber.Text(Shortening.UsualRemovalPitches);

    /// <summary>Of a chain that was fitted, its pitches; empty where nobody counted.</summary>
    public string NewPitches { get; set; } = "";

    /// <summary>Of a sprocket that was fitted, its teeth; empty where nobody counted.</summary>
    public string NewTeeth { get; set; } = "";

    /// <summary>Plant time as a date-and-time control gives it; empty for now.</summary>
    public string At { get; set; } = "";

    /// <summary>Of a chain that was fitted, the supplier's lot on its tag.</summary>
    public string Lot { get; set; } = "";

    /// <summary>Of a chain that was replaced, whether it broke while it ran.</summary>
    public bool Broke { get; set; }

    /// <summary>Where the take-up stands after it, in millimetres; empty where nobody read it.</summary>
    public string TakeUp { get; set; } = "";

    public string Note { get; set; } = "";

    public string By { get; set; } = "";

    /// <summary>Made once for each form: pressing the button twice tells it once.</summary>
    public string Key { get; } = "done-" + Guid.NewGuid().ToString("N");

    /// <summary>The pitches as a number; null for no whole number.</summary>
    public int? PitchesOutCount => Count(PitchesOut);

    /// <summary>Whether the take-up's position is asked for: after work on the slack, where there is a take-up.</summary>
    public bool AsksTakeUp(DoneChain chain) => Kind is { } kind && EventFacts.TellsTakeUp(kind) && !chain.Card.FixedCentres;

    private bool ChangesCounter => Kind == ChainEventKind.MeterReset;

    /// <summary>What is wrong, by field in the words of the file format; empty when it can be saved.</summary>
    public IReadOnlyDictionary<string, string> Faults(DoneChain chain)
    {
        var faults = new Dictionary<string, string>();
        if (CounterFault(chain) is { } counter) faults["counter_h_before"] = counter;
        if (ChangesCounter && TypedNumber.Of(CounterAfter) is not >= 0)
            faults["counter_h_after"] = TypedNumber.Fault(CounterAfter, $"A number such as 0: what the counter shows since.");
        if (Kind == ChainEventKind.Shortened && PitchesFault(chain) is { } pitches) faults["pitches_out"] = pitches;
        if (Kind == ChainEventKind.Replacement && Miscounted(NewPitches, 1, EventFacts.MostPitches))
            faults["new_pitches"] = TypedNumber.Fault(NewPitches, $"A whole number of pitches, at least 1.");
        if (Kind == ChainEventKind.SprocketReplaced && Miscounted(NewTeeth, EventFacts.FewestTeeth, EventFacts.MostTeeth))
            faults["new_teeth"] = TypedNumber.Fault(NewTeeth, $"A sprocket has 5 to 1,000 teeth.");
        if (AsksTakeUp(chain) && TakeUpFault is { } takeUp) faults["take_up_mm"] = takeUp;
        if (At.Length > 0 && Moment(chain.Time) is null) faults["taken_at"] = T["A date and a time."];
        if (Moment(chain.Time) > chain.Time.Now + TimeSpan.FromMinutes(5)) faults["taken_at"] = T["The time lies in the future."];
        if (Note.Length > 200) faults["note"] = T["Longer than 200 characters."];
        return faults;
    }

    /// <summary>What is told; only for a form without faults. Told again, it keeps the moment of the first time.</summary>
    public NewEvent ToEvent(DoneChain chain, DateTimeOffset now)
    {
        toldAt ??= now;
        var before = TypedNumber.Of(Counter);
        return new NewEvent
        {
            Key = Key,
            Told = new ChainEvent
            {
                Chain = chain.Name,
                Kind = Kind!.Value,
                At = Moment(chain.Time) ?? toldAt,
                CounterBefore = RowFields.Hours(before),
                CounterAfter = RowFields.Hours(ChangesCounter ? TypedNumber.Of(CounterAfter) : before),
                Lot = Kind == ChainEventKind.Replacement ? Lot.Trim() : "",
                Broke = Kind == ChainEventKind.Replacement && Broke,
                PitchesOut = Kind == ChainEventKind.Shortened ? PitchesOutCount : null,
                NewPitches = Kind == ChainEventKind.Replacement ? Count(NewPitches) : null,
                NewTeeth = Kind == ChainEventKind.SprocketReplaced ? Count(NewTeeth) : null,
                TakeUpMm = AsksTakeUp(chain) ? TypedNumber.Of(TakeUp) : null,
                Note = Note.Trim(),
            },
            ToldBy = By.Trim().Length > 0 ? By.Trim() : PersonName.Nobody,
        };
    }

    /// <summary>The same work at the chains that run together with it, where they were shortened too.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="told">What was told of it.</param>
    public IEnumerable<NewEvent> ForGroup(DoneChain chain, NewEvent told) =>
        Kind is ChainEventKind.Shortened && WithGroup
            ? chain.Mates.Select(mate => told with
            {
                Key = $"{told.Key}-{mate}",
                // Each has a take-up and perhaps a counter of its own.
                Told = told.Told with { Chain = mate, CounterBefore = null, CounterAfter = null, TakeUpMm = null },
            })
            : [];

    /// <summary>What was done, as it stands on its button.</summary>
    public static string Name(ChainEventKind kind) => kind switch
    {
        ChainEventKind.Oiling => T["Oiled"],
        ChainEventKind.Inspection => T["Looked at"],
        ChainEventKind.Tensioned => T["Tensioned"],
        ChainEventKind.Shortened => T["Shortened"],
        ChainEventKind.Replacement => T["Chain replaced"],
        ChainEventKind.MeterReset => T["Hour counter changed"],
        ChainEventKind.SprocketReplaced => T["Sprocket replaced"],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static int? Count(string typed) => TypedNumber.WholeOf(typed) is >= 0 and var n ? n : null;

    private static bool Miscounted(string typed, int fewest, int most) =>
        typed.Trim().Length > 0 && !(Count(typed) >= fewest && Count(typed) <= most);

    private string? CounterFault(DoneChain chain)
    {
        if (Counter.Trim().Length == 0) return ChangesCounter ? T["What the counter showed just before."] : null;
        if (TypedNumber.Of(Counter) is not (>= 0 and <= 1e7 and var told))
            return TypedNumber.Fault(Counter, $"A number such as 12400.");
        // Of something done earlier the counter may well be lower.
        return At.Length == 0 && told < chain.LastCounterH
            ? T[$"Lower than the last one, {Show.Hours(chain.LastCounterH)}. Was the hour counter changed? "
                + $"Then record that first."]
            : null;
    }

    private string? TakeUpFault => TakeUp.Trim().Length == 0 || TypedNumber.Of(TakeUp) is >= 0 and <= EventFacts.MostTakeUpMm
        ? null
        : TypedNumber.Fault(TakeUp, $"Millimetres such as 35, from where a new chain is taut.");

    private string? PitchesFault(DoneChain chain)
    {
        if (PitchesOutCount is not (>= 1 and <= EventFacts.MostPitchesOut))
            return TypedNumber.Fault(PitchesOut, $"A whole number of pitches, at least 1.");
        var told = new ChainEvent { Chain = chain.Name, Kind = ChainEventKind.Shortened, PitchesOut = PitchesOutCount };
        var before = Shortening.PitchesOut(chain.Raw.Events);
        return EventFacts.FaultsAt(told, chain.Card, before).Select(f => (string?)T[f.Reason]).FirstOrDefault();
    }

    private DateTimeOffset? Moment(PlantTime time) =>
        DateTime.TryParseExact(
            At, ["yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var wall)
            ? new DateTimeOffset(wall, time.Zone.GetUtcOffset(wall))
            : null;
}
