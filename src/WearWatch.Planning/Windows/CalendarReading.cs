namespace WearWatch.Planning.Windows;

/// <summary>What was read from a calendar.</summary>
/// <param name="Rules">The shutdowns.</param>
/// <param name="Refusals">What could not be used, with why; one for each.</param>
public sealed record CalendarReading(IReadOnlyList<WindowRule> Rules, IReadOnlyList<Phrase> Refusals);
