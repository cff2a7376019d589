using System.Globalization;
using WearWatch.Wear;

namespace WearWatch.Benchmarks.Worlds;

/// <summary>How often a risen rate is told where none has risen, and found where it has trebled.</summary>
internal sealed class WorldRises
{
    private const int ReadingsToFind = 3;
    private const double Told = 0.5;
    private int readings, falselyTold, trebled, found;

    /// <summary>Follows a chain and counts.</summary>
    public void Look(WorldChain chain, WearFilter filter, WearPrior prior)
    {
        var (track, told, after) = (WearTrack.AtFitting(prior), false, 0);
        var seen = false;
        foreach (var observation in chain.Observations)
        {
            track = filter.Step(track, observation);
            var now = WearNow.Of(track, filter).ProbabilityRateRose > Told;
            if (observation.HoursSinceFitting <= chain.RisenHours)
            {
                readings++;
                if (now && !told) falselyTold++;
            }
            else if (++after <= ReadingsToFind)
            {
                seen |= now;
            }

            told = now;
        }

        if (after < ReadingsToFind) return;
        trebled++;
        if (seen) found++;
    }

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{1000.0 * falselyTold / Math.Max(readings, 1):0.0} / {(double)found / Math.Max(trebled, 1):0.00}");
}
