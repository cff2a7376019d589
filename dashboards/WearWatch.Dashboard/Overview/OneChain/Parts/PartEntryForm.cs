using WearWatch.Chains.Parts;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Units;

namespace WearWatch.Dashboard.Overview.OneChain.Parts;

/// <summary>A reading of a part as a person types it.</summary>
public sealed class PartEntryForm
{
    private DateTimeOffset? toldAt;

    public WearPart Part { get; set; }

    public string Value { get; set; } = "";

    public string Place { get; set; } = "";

    /// <summary>Its size when new; of what shrinks only.</summary>
    public string New { get; set; } = "";

    /// <summary>The plant's own limit, or empty.</summary>
    public string Limit { get; set; } = "";

    public string LimitSource { get; set; } = "";

    public string Counter { get; set; } = "";

    /// <summary>Made once for each form: pressing the button twice tells it once.</summary>
    public string Key { get; } = "part-" + Guid.NewGuid().ToString("N");

    /// <summary>What is wrong with a number as typed, or which of two is meant; null where it is plain.</summary>
    public string? Fault(string field) => field switch
    {
        "value" => FaultOf(Value),
        "new" => FaultOf(New),
        "limit" => FaultOf(Limit),
        "counter_h" when Counter.Trim().Length > 0 && TypedNumber.Of(Counter) is null =>
            TypedNumber.Fault(Counter, $"A number such as 12400."),
        _ => null,
    };

    /// <summary>What is told; told again, it keeps the moment of the first time.</summary>
    public NewPartReading ToEntry(string chain, string by, LengthUnit unit, DateTimeOffset now) => new(
        new PartAsWritten
        {
            Chain = chain,
            TakenAt = toldAt ??= now,
            CounterH = TypedNumber.Of(Counter),
            Part = FileWords.Of(Part),
            Place = Place,
            Value = Plain(Value),
            New = Part.Grows ? "" : Plain(New),
            Limit = Plain(Limit),
            LimitSource = LimitSource,
            Unit = unit,
        },
        Key, by);

    private static string Plain(string typed) => TypedNumber.WithPoints(typed, out _) ?? typed;

    private static string? FaultOf(string typed) => TypedNumber.WithPoints(typed, out var question) is null ? T[question] : null;
}
