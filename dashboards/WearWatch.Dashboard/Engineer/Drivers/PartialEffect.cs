using WearWatch.Chains;
using WearWatch.Learning;

namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>
/// How the wear rate of the plant's typical chain changes with one quantity, over the range that the plant has.
/// </summary>
/// <param name="Quantity">The quantity with its unit.</param>
/// <param name="Points">The rate over that of the typical chain, with its 90 % interval, by rising quantity.</param>
/// <param name="Typical">The typical chain's value.</param>
public sealed record PartialEffect(Phrase Quantity, IReadOnlyList<PartialPoint> Points, double Typical)
{
    private const int PointsDrawn = 24;
    private const int FewestChains = 5;

    /// <summary>
    /// The effects of hours since oiling where they are told, load and speed; none where hardly a chain tells the quantity.
    /// </summary>
    public static IReadOnlyList<PartialEffect> Of(IReadOnlyList<ChainCard> cards, FleetModel model)
    {
        var loads = Told(cards, c => c.Duty.RelativeLoad);
        var speeds = Told(cards, c => c.Duty.SpeedMetresPerSecond);
        if (loads.Length < FewestChains || speeds.Length < FewestChains) return [];
        var typical = TypicalChain(cards, loads, speeds);
        var oilAges = Told(cards, c => c.Duty.HoursSinceOiling);
        return
        [
            .. oilAges.Length < FewestChains || !model.Uses(FleetModel.HoursSinceOiling) ? [] : new[]
            {
                Along(
                    $"hours since lubrication", oilAges,
                    value => typical with { Duty = typical.Duty with { HoursSinceOiling = value } },
                    typical with { Duty = typical.Duty with { HoursSinceOiling = oilAges[oilAges.Length / 2] } }, model),
            },
            Along($"relative load", loads, value => typical with { Duty = typical.Duty with { RelativeLoad = value } }, typical,
                model),
            Along($"speed, m/s", speeds, value => typical with { Duty = typical.Duty with { SpeedMetresPerSecond = value } },
                typical, model),
        ];
    }

    /// <summary>In words.</summary>
    public Phrase InWords() =>
        $"{Quantity}: at {Points[0].Value:0.##} {EngineerWords.Factor(Points[0].Factor)}, at {Points[^1].Value:0.##} "
        + $"{EngineerWords.Factor(Points[^1].Factor)} of the rate at {Typical:0.##}";

    private static double[] Told(IEnumerable<ChainCard> cards, Func<ChainCard, double?> quantity) =>
        [.. cards.Select(quantity).Where(v => v is > 0).Select(v => v!.Value).Order()];

    /// <summary>The middle of every number and the commonest of every state.</summary>
    private static ChainCard TypicalChain(IReadOnlyList<ChainCard> cards, double[] loads, double[] speeds)
    {
        var commonest = cards.GroupBy(c => (c.Family, c.ChainType, c.Duty.Lubrication, c.Duty.Dust))
            .MaxBy(g => g.Count())!.First();
        return commonest with
        {
            Line = "",
            Duty = commonest.Duty with
            {
                RelativeLoad = loads[loads.Length / 2],
                SpeedMetresPerSecond = speeds[speeds.Length / 2],
            },
        };
    }

    private static PartialEffect Along(
        Phrase quantity, double[] values, Func<double, ChainCard> with, ChainCard typical, FleetModel model)
    {
        var (least, greatest) = (values[0], values[^1]);
        return new PartialEffect(
            quantity,
            [
                .. from i in Enumerable.Range(0, PointsDrawn + 1)
                   let value = least * Math.Pow(greatest / least, (double)i / PointsDrawn)
                   let change = model.Change(typical, with(value))
                   select new PartialPoint(value, 1 / change.LifeFactor, 1 / change.LifeFactorHigh, 1 / change.LifeFactorLow)
            ],
            values[values.Length / 2]);
    }
}
