using WearWatch.Gauging;
using WearWatch.Plant.Files;
using WearWatch.Storage.Rows;
using WearWatch.Units;

namespace WearWatch.Plant.Intake;

/// <summary>A reading on its way in, as it was told; the numbers are not checked yet.</summary>
public sealed record NewReading
{
    /// <summary>Given by whoever sends it: the same key sent twice is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>Who made the key.</summary>
    public KeyOwner KeyOwner { get; init; }

    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>When it was taken; this or the counter is needed.</summary>
    public DateTimeOffset? TakenAt { get; init; }

    /// <summary>The hour counter when it was taken.</summary>
    public double? CounterH { get; init; }

    /// <summary>With what it was measured.</summary>
    public required Tool Tool { get; init; }

    /// <summary>The marked section of the chain, or empty.</summary>
    public string Place { get; init; } = "";

    /// <summary>Number of pitches in the length.</summary>
    public required int Pitches { get; init; }

    /// <summary>
    /// The length as it was typed, such as <c>1533.5</c>, <c>60 3/8</c> or, by caliper, <c>258.6 inside 282.4 outside</c>;
    /// several of one place with semicolons.
    /// </summary>
    public required string Length { get; init; }

    /// <summary>The unit of the length, where its text bears no mark of its own.</summary>
    public LengthUnit Unit { get; init; } = LengthUnit.Millimetre;

    /// <summary>Temperature of the chain in degrees Celsius, or null.</summary>
    public double? TemperatureC { get; init; }

    /// <summary>Which strand of a multi-strand chain, from 1, or null.</summary>
    public int? Strand { get; init; }

    /// <summary>How the chain was held meanwhile.</summary>
    public Held Held { get; init; }

    /// <summary>Where the take-up stood, in millimetres from where a new chain is taut, or null.</summary>
    public double? TakeUpMm { get; init; }

    /// <summary>Standard uncertainty of the length, where sensors tell it; null for what is usual for the tool.</summary>
    public double? LengthUncertaintyMm { get; init; }

    /// <summary>Who or what told it.</summary>
    public required string ToldBy { get; init; }

    /// <summary>Whether a person has already said yes to a length or counter that looks wrong.</summary>
    public bool Confirmed { get; init; }

    /// <summary>Whether the one who tells it is a planner, whose yes alone counts for what no chain can be.</summary>
    public bool ByPlanner { get; init; }

    /// <summary>A reading whose facts are known and whose length is still text.</summary>
    /// <param name="facts">What was told beside the length; the length in it is not read.</param>
    /// <param name="length">The length as it was typed.</param>
    /// <param name="unit">The unit of the length, where its text bears no mark of its own.</param>
    /// <param name="key">Given by whoever sends it.</param>
    /// <param name="by">Who or what told it.</param>
    public static NewReading Of(Reading facts, string length, LengthUnit unit, string key, string by) => new()
    {
        Key = key,
        Chain = facts.Chain,
        TakenAt = facts.TakenAt,
        CounterH = facts.Counter?.Hours,
        Tool = facts.Tool,
        Place = facts.Place,
        Pitches = facts.Pitches,
        Length = length,
        Unit = unit,
        TemperatureC = facts.TemperatureC,
        Strand = facts.Strand,
        Held = facts.Held,
        TakeUpMm = facts.TakeUpMm,
        ToldBy = by,
    };

    /// <summary>The reading as the domain knows it.</summary>
    /// <param name="lengths">Its length, understood.</param>
    public Reading ToReading(EnteredLengths.Understood lengths) => new()
    {
        Chain = Chain,
        TakenAt = TakenAt?.ToUniversalTime(),
        Counter = RowFields.Hours(CounterH),
        Tool = Tool,
        Place = Place.Trim(),
        Strand = Strand,
        Held = Held,
        Pitches = Pitches,
        LengthMm = lengths.MeanMm,
        Written = Length.Trim(),
        Unit = lengths.WrittenIn,
        TakeUpMm = TakeUpMm,
        TemperatureC = TemperatureC,
        LengthUncertaintyMm = LengthUncertaintyMm,
    };
}
