using WearWatch.SensorSim.Plant;
using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Histories;

/// <summary>Deals the fates of a mill's positions, so that the dashboard has some of everything to show.</summary>
internal static class Fates
{
    private const int SwapNow = 7;
    private const int PlanASwap = 14;
    private const int WearsFaster = 4;
    private const int JustFitted = 2;
    private const int NeverMeasured = 4;
    private const int BadLotSize = 3;

    /// <summary>The fate of every position, by the name of its chain.</summary>
    public static IReadOnlyDictionary<string, PositionFate> Deal(int seed, IReadOnlyList<MillPosition> positions)
    {
        var fates = positions.ToDictionary(p => p.ChainName, _ => new PositionFate());
        var badLot = BadLotAmong(positions, Chance.For(seed, "bad lot"));
        foreach (var name in badLot) fates[name] = fates[name] with { Outlook = Outlook.BadLot };

        var deck = new Queue<string>(Chance.For(seed, "outlooks").Shuffled(fates.Keys.Except(badLot)));
        Hand(SwapNow, f => f with { Outlook = Outlook.SwapNow });
        Hand(PlanASwap, f => f with { Outlook = Outlook.PlanASwap });
        Hand(WearsFaster, f => f with { Outlook = Outlook.WearsFaster });
        Hand(JustFitted, f => f with { Outlook = Outlook.JustFitted });
        Hand(NeverMeasured, f => f with { IsNeverMeasured = true });
        // What is left of the deck is within its limit; records are lost there only, where they spoil nothing else to be seen.
        Hand(2, f => f with { IsFittingUnrecorded = true, AreReplacementsUnrecorded = true });
        Hand(2, f => f with { IsFittingUnrecorded = true });
        Hand(2, f => f with { Meter = MeterFate.ExchangeForgotten });
        Hand(6, f => f with { Meter = MeterFate.ExchangeRecorded });
        Hand(5, f => f with { IsLoadUnknown = true });
        Hand(3, f => f with { IsLastReadingWrong = true });

        var byHand = positions.Where(p => p.Duty.Lubrication == Lubrication.Manual).Select(p => p.ChainName);
        foreach (var name in Chance.For(seed, "lapsed oiling").Shuffled(byHand).Take(6))
            fates[name] = fates[name] with { HasOilingLapsed = true };
        return fates;

        void Hand(int cards, Func<PositionFate, PositionFate> change)
        {
            for (var i = 0; i < cards; i++)
            {
                var name = deck.Dequeue();
                fates[name] = change(fates[name]);
            }
        }
    }

    /// <summary>A lot is of one size, so the bad one shows where several positions run the same.</summary>
    private static string[] BadLotAmong(IReadOnlyList<MillPosition> positions, Chance chance)
    {
        var sizes = positions.GroupBy(p => p.Size).Where(g => g.Count() >= BadLotSize).ToList();
        return [.. chance.OneOf(sizes).Take(BadLotSize).Select(p => p.ChainName)];
    }
}
