namespace WearWatch.Entries;

/// <summary>A slip of the counter or the date, with its share of all entries and what it makes of one.</summary>
/// <param name="Kind">The slip.</param>
/// <param name="Share">How many entries it spoils. Common practice.</param>
/// <param name="Meant">The entries that may have been meant.</param>
internal sealed record CounterSlip(SlipKind Kind, double Share, Func<CounterCase, IEnumerable<MeantEntry>> Meant);
