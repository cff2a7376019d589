namespace WearWatch.Chains.Families;

/// <summary>Between which points a length over pitches is taken.</summary>
public enum MeasuredPoints
{
    /// <summary>From the middle of one pin to the middle of another; over end rollers it comes to the same.</summary>
    PinMiddles,

    /// <summary>From the inner edge of one link to the inner edge of another.</summary>
    LinkEdges,
}
