namespace WearWatch.Plant.Settings;

/// <summary>One thing that is wrong with what was told.</summary>
/// <param name="Field">The field, in the words of the file format (<c>pitches</c>, <c>length</c>, <c>counter_h</c>, ...).</param>
/// <param name="Reason">What is wrong and what would do.</param>
public sealed record Refusal(string Field, string Reason);
