namespace WearWatch.Plant.Settings;

/// <summary>One thing that is wrong with what was told.</summary>
/// <param name="Field">The field, in the words of the file format (<c>pitches</c>, <c>length</c>, <c>counter_h</c>, ...).</param>
/// <param name="Reason">What is wrong and what would do.</param>
public sealed record Refusal(string Field, Phrase Reason)
{
    /// <summary>The field of what is taken once it is told again with a yes.</summary>
    public const string ToBeConfirmed = "confirmed";
}
