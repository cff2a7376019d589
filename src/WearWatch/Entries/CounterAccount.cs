using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>What an entry was if its counter or date slipped, before its length is looked at.</summary>
/// <param name="Kind">The slip.</param>
/// <param name="Entry">The entry as it was meant.</param>
/// <param name="Words">What it was, for the person who entered it.</param>
/// <param name="LogWeight">ln of share times probability density of the counter that was told, an hour.</param>
/// <param name="Expected">The elongation that is expected then; null where nothing says.</param>
public sealed record CounterAccount(SlipKind Kind, Reading Entry, Phrase Words, double LogWeight, Expectation? Expected = null);
