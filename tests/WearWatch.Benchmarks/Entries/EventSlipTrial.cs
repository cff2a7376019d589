using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Entries;

/// <summary>What came of many events with one slip.</summary>
/// <param name="Slip">The slip.</param>
/// <param name="Made">How many were made.</param>
/// <param name="Asked">How many are sent back.</param>
/// <param name="Moved">How many of the others move the early date by more than 90 days from where the right one leaves
/// it.</param>
/// <param name="MostDays">By how many days they move it at most.</param>
/// <param name="Which">Which one did.</param>
internal sealed record MovedByEvent(EventSlip Slip, int Made, int Asked, int Moved, double MostDays, string Which)
{
    public override string ToString() => FormattableString.Invariant(
        $"{Slip.Field,-17} {Slip.Name,-17} made {Made,5}  sent back {Asked,5}  moved {Moved,4}  ")
        + FormattableString.Invariant($"at most {MostDays,7:0} days  {Which}");
}

/// <summary>Spoils any field of an event and looks how far the early date moves where nobody is asked.</summary>
internal static class EventSlipTrial
{
    private const int ReadingsBefore = 4;
    private const double Days = 90;
    private const double OutOfSightDays = 50 * 365.25;

    public static MovedByEvent Of(TrialFleet fleet, EventSlip slip, int count, int seed)
    {
        var chance = new Random(seed);
        var (made, asked, moved, most, which) = (0, 0, 0, 0.0, "");
        var places = fleet.Chains.SelectMany(c => Enumerable.Range(ReadingsBefore, Math.Max(0, c.Readings.Count - ReadingsBefore))
            .SelectMany(i => c.EventsBetween(i).Select(e => (Chain: c, Index: i, Event: e)))).ToArray();
        chance.Shuffle(places);
        foreach (var (chain, i, right) in places)
        {
            if (made >= count) break;
            if (slip.Spoil(right, chance) is not { } spoiled || spoiled == right) continue;
            made++;
            if (IsSentBack(fleet, chain, i, spoiled))
            {
                asked++;
                continue;
            }

            var days = Math.Abs(EarlyDays(fleet, chain, i, spoiled) - EarlyDays(fleet, chain, i, right));
            if (days > Days) moved++;
            if (days > most)
            {
                (most, which) = (days, FormattableString.Invariant(
                    $"{chain.Card.Name} {right.Kind} {right.At:yyyy-MM-dd} {right.CounterBefore?.Hours}, ")
                    + FormattableString.Invariant(
                        $"told {spoiled.At:yyyy-MM-dd} {spoiled.CounterBefore?.Hours}/{spoiled.CounterAfter?.Hours}"));
            }
        }

        return new MovedByEvent(slip, made, asked, moved, most, which);
    }

    /// <summary>As the desk and the import judge it.</summary>
    private static bool IsSentBack(TrialFleet fleet, TrialChain chain, int i, ChainEvent spoiled)
    {
        if (EventFacts.Faults(spoiled).Concat(EventFacts.FaultsAt(spoiled, chain.Card)).Any()) return true;
        var at = chain.Readings[i].TakenAt;
        return So(chain, i).CounterDoubt(spoiled, fleet.Calendar,
            fleet.Chains.Where(c => c != chain && c.Card.Line.Length > 0 && c.Card.Line == chain.Card.Line)
                .Select(c => (Chain: c, Read: c.Readings.TakeWhile(r => r.TakenAt < at).Count()))
                .Where(c => c.Read > 1 && c.Read < c.Chain.Readings.Count).Select(c => So(c.Chain, c.Read))) is not null;
    }

    private static ChainSoFar So(TrialChain chain, int i) =>
        new(chain.Card, [.. chain.EventsBefore(i - 1)],
            chain.Before(i).LastOrDefault(r => r.Counter is not null)?.Counter?.Hours,
            chain.Before(i).LastOrDefault(r => r.TakenAt is not null)?.TakenAt)
        {
            Readings = chain.Before(i),
        };

    private static double EarlyDays(TrialFleet fleet, TrialChain chain, int i, ChainEvent told)
    {
        var now = chain.Readings[i].TakenAt!.Value;
        var early = Assessment.Of(
            chain.Card, chain.Before(i), [.. chain.EventsBefore(i - 1), told], WearPrior.Broad, fleet.Calendar, now)
            .DateAt(5, fleet.Calendar, now);
        return early is { } date ? (date - now).TotalDays : OutOfSightDays;
    }
}
