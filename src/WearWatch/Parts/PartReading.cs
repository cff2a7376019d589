using WearWatch.Chains.Parts;
using WearWatch.Running;

namespace WearWatch.Parts;

/// <summary>What somebody measured of a part beside the elongation, as it was told: raw input, kept for ever.</summary>
public sealed record PartReading
{
    /// <summary>Which part.</summary>
    public required WearPart Part { get; init; }

    /// <summary>The reading in millimetres.</summary>
    public required double Mm { get; init; }

    /// <summary>When it was measured, if it was told.</summary>
    public DateTimeOffset? TakenAt { get; init; }

    /// <summary>The hour counter then, if it was told.</summary>
    public RunningHours? Counter { get; init; }

    /// <summary>Which one, where: such as <c>drive sprocket, tooth 1</c>; or empty.</summary>
    public string Place { get; init; } = "";

    /// <summary>Its size when new and its limit, where they were told with it.</summary>
    public PartTold Told { get; init; } = PartTold.Nothing;
}
