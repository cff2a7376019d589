using WearWatch.Gauging;
using WearWatch.Phrases;
using WearWatch.Running;
using WearWatch.Units;

namespace WearWatch.Storage.Rows;

/// <summary>Whether a reading may be used.</summary>
public enum ReadingStanding
{
    /// <summary>It is used.</summary>
    Accepted,

    /// <summary>It is kept and waits for a person's yes, since a chain hardly has such a length.</summary>
    Waiting,
}

/// <summary>
/// One reading as it was told. Rows are only ever added: a correction is a new row that names the one it replaces.
/// </summary>
public sealed class ReadingRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Given by whoever sends it, or made from its content: the same reading sent twice is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>Who made the key.</summary>
    public KeyOwner KeyOwner { get; init; }

    /// <summary>A hash of what was told: a file that holds this reading again, such as an export, is recognised by it.</summary>
    public string Fingerprint { get; init; } = "";

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterH { get; init; }

    public Tool Tool { get; init; }

    public string Place { get; init; } = "";

    /// <summary>Which strand of a multi-strand chain, from 1; null when it was not told.</summary>
    public int? Strand { get; init; }

    /// <summary>Whether it was measured in place, taut.</summary>
    public bool Taut { get; init; }

    /// <summary>The measuring load in newtons, or null.</summary>
    public double? LoadN { get; init; }

    public int Pitches { get; init; }

    public double LengthMm { get; init; }

    public double? TemperatureC { get; init; }

    /// <summary>Standard uncertainty of the length, where sensors have told it; null for what is usual for the tool.</summary>
    public double? LengthUncertaintyMm { get; init; }

    /// <summary>The length as it was written, so that a slip can be found later; empty where nobody wrote it.</summary>
    public string Written { get; init; } = "";

    /// <summary>The unit in which it was written.</summary>
    public LengthUnit Unit { get; init; }

    /// <summary>Where the take-up stood at this visit, from where a new chain is taut.</summary>
    public double? TakeUpMm { get; init; }

    /// <summary>The length as it was written, with its unit, for people to read; not kept beside the two.</summary>
    public string LengthAsTold => LengthText.WithUnit(Written, Unit);

    public ReadingStanding Standing { get; init; }

    /// <summary>Why it waits; empty when it does not.</summary>
    public Phrase WhyWaiting { get; init; } = Phrase.None;

    /// <summary>The reading that this one replaces, or null.</summary>
    public long? CorrectsId { get; init; }

    /// <summary>Set on a correction that withdraws a reading rather than giving another value.</summary>
    public bool Withdraws { get; init; }

    /// <summary>Who or what told it: a person, a file with its line, a sensor.</summary>
    public string ToldBy { get; init; } = "";

    /// <summary>Why it was withdrawn or corrected, as the person told; or empty.</summary>
    public string Note { get; init; } = "";

    public DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The reading as the domain knows it.</summary>
    public Reading ToReading(string chain) => new()
    {
        Chain = chain,
        TakenAt = TakenAt,
        Counter = CounterH is { } h ? new RunningHours(h) : null,
        Tool = Tool,
        Place = Place,
        Strand = Strand,
        Held = Held.From(Taut, LoadN),
        Pitches = Pitches,
        LengthMm = LengthMm,
        Written = Written,
        Unit = Unit,
        TakeUpMm = TakeUpMm,
        TemperatureC = TemperatureC,
        LengthUncertaintyMm = LengthUncertaintyMm,
    };
}
