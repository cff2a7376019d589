using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Entries;

/// <summary>What came of many rows with one slip.</summary>
/// <param name="Slip">The slip.</param>
/// <param name="Made">How many were made.</param>
/// <param name="Asked">How many are asked about or refused.</param>
/// <param name="Moved">
/// How many of the others move the early date by more than 90 days from where a length as expected leaves it.
/// </param>
/// <param name="MostDays">By how many days they move it at most.</param>
/// <param name="Which">Which one did.</param>
internal sealed record MovedCount(AnySlip Slip, int Made, int Asked, int Moved, double MostDays, string Which)
{
    public override string ToString() => FormattableString.Invariant(
        $"{Slip.Field,-14} {Slip.Name,-20} made {Made,5}  asked {Asked,5}  moved {Moved,4}  ")
        + FormattableString.Invariant($"at most {MostDays,7:0} days  {Which}");
}

/// <summary>Spoils any field of a row and looks how far the early date moves that nobody was asked about.</summary>
internal static class AnySlipTrial
{
    private const int ReadingsBefore = 4;
    private const double Days = 90;
    private const double Ordinary = 2;

    /// <summary>A date out of sight stands this far away.</summary>
    private const double OutOfSightDays = 50 * 365.25;

    public static MovedCount Of(TrialFleet fleet, AnySlip slip, int count, int seed)
    {
        var chance = new Random(seed);
        var (made, asked, moved, most, which) = (0, 0, 0, 0.0, "");
        for (var tries = 0; made < count && tries < 10 * count; tries++)
        {
            if (LengthTrial.Draw(fleet, chance, ReadingsBefore) is not var (chain, i)) continue;
            var right = chain.Readings[i];
            var other = LengthTrial.OfNeighbour(fleet, chain, i, chance);
            if (slip.Spoil(chain.Card, right, chain.Readings[i - 1], other, chance) is not { } spoiled) continue;
            made++;
            if (!IsUsed(chain, i, spoiled) || SlipTrial.Ask(fleet, chain, i, spoiled) is not { IsDoubted: false } doubt)
            {
                asked++;
                continue;
            }

            // Within two standard deviations of what was expected it is as good as any other reading.
            if (Math.Abs(doubt.Deviations) <= Ordinary) continue;
            var expected = right with
            {
                LengthMm = right.Pitches * chain.Card.PitchMm * (1 + doubt.Expected.MeanPercent / 100),
                TemperatureC = null,
            };
            var days = Math.Abs(EarlyDays(fleet, chain, i, spoiled) - EarlyDays(fleet, chain, i, expected));
            if (days > Days) moved++;
            if (days > most)
            {
                (most, which) = (days, FormattableString.Invariant(
                    $"{chain.Card.Name} {i}: {right.LengthMm:0.#}/{right.Pitches} at {right.Counter?.Hours} h, ")
                    + FormattableString.Invariant(
                        $"told {spoiled.LengthMm:0.#}/{spoiled.Pitches} at {spoiled.Counter?.Hours} h"));
            }
        }

        return new MovedCount(slip, made, asked, moved, most, which);
    }

    /// <summary>Whether the desk neither refuses it nor lets it wait.</summary>
    private static bool IsUsed(TrialChain chain, int i, Reading entry)
    {
        var before = chain.Before(i);
        var so = new ChainSoFar(chain.Card, [.. chain.EventsBefore(i)],
            before.LastOrDefault(r => r.Counter is not null)?.Counter?.Hours,
            before.LastOrDefault(r => r.TakenAt is not null)?.TakenAt);
        return ReadingJudge.Judge(entry, so, chain.Readings[i].TakenAt!.Value.AddHours(1), askAboutFalls: true)
            is Judgement.Use { Remark: null };
    }

    private static double EarlyDays(TrialFleet fleet, TrialChain chain, int i, Reading told)
    {
        var now = chain.Readings[i].TakenAt!.Value;
        var early = Assessment.Of(
            chain.Card, [.. chain.Before(i), told], chain.EventsBefore(i), WearPrior.Broad, fleet.Calendar, now)
            .DateAt(5, fleet.Calendar, now);
        return early is { } date ? (date - now).TotalDays : OutOfSightDays;
    }
}
