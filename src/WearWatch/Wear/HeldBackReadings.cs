using WearWatch.Chains;

namespace WearWatch.Wear;

/// <summary>Collects the readings that are not used, each with its reason and what it may have been meant to be.</summary>
internal static class HeldBackReadings
{
    public static IReadOnlyList<HeldBackReading> Of(
        ChainCard card, IReadOnlyList<GaugedReading> gauged, HourLine line, Lifetimes lives)
    {
        var held = new List<HeldBackReading>();
        for (var i = 0; i < gauged.Count; i++)
        {
            if (line.Slips.TryGetValue(i, out var slip)) held.Add(new(i, slip, []));
            else if (!lives.Places.TryGetValue(i, out var place))
                held.Add(new(i, $"Neither its counter nor its date says at how many running hours it was taken.", []));
            else if (gauged[i].WhyNot is { } why)
            {
                var expected = WearFilter.Default.Expect(lives.Chains[place.Life], WearPrior.Broad, place.Hours);
                held.Add(new(i, why, Corrections.For(card, gauged[i].Reading, expected)));
            }
        }

        return held;
    }
}
