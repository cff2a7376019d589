using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Learning;

/// <summary>One thing on a chain's card that its wear rate may depend on, as columns of the regression.</summary>
/// <remarks>
/// A number is one column, its logarithm: Archard's law multiplies load and sliding distance, so that logarithms add
/// (docs/references.md [18]). A state is a column for each of its values but the ordinary one, in no order: between oiled by hand
/// and not oiled there is no midpoint to assume.
/// </remarks>
/// <param name="Name">Its name on the card, in words.</param>
/// <param name="Columns">Names of its columns.</param>
/// <param name="ValuesOf">Its columns' values for a card; null when the card does not tell.</param>
internal sealed record DutyInput(string Name, IReadOnlyList<string> Columns, Func<ChainCard, double[]?> ValuesOf)
{
    /// <summary>All inputs, in the order of their columns.</summary>
    public static IReadOnlyList<DutyInput> All { get; } =
    [
        Number("relative load", "ln(load / 0.5)", card => card.Duty.RelativeLoad / 0.5),
        Number("speed", "ln(speed / 1 m/s)", card => card.Duty.SpeedMetresPerSecond),
        State("lubrication", card => card.Duty.Lubrication, ordinary: LubricationState.Manual),
        State("dust", card => card.Duty.Dust, ordinary: DustLevel.Clean),
        Number("pitch", "ln(pitch / 25.4 mm)", card => card.PitchMm / 25.4),
        Number("teeth", "ln(teeth / 38)", card => card.SprocketTeeth.Count > 0 ? card.SprocketTeeth.Max() / 38.0 : null),
        Number("length", "ln(pitches / 100)", card => card.Pitches / 100.0),
        Family,
        Number(FleetModel.HoursSinceOiling, "ln(hours since oiling / 24 h)",
            card => card.Duty.HoursSinceOiling / 24) with { OnTrial = true },
        new("temperature", ["temperature over 20 °C in 10 K"], card => card.Duty.AmbientC is { } c
            ? [(c - 20) / 10]
            : null) { OnTrial = true },
    ];

    /// <summary>Whether it has to lower the error on unseen chains before it is used (<see cref="InputTrial"/>).</summary>
    /// <remarks>
    /// Such an input rests on how well a plant keeps its records, which differs; the others stand on every card.
    /// </remarks>
    public bool OnTrial { get; private init; }

    /// <summary>A column for each kind of chain but the usual one, by its name.</summary>
    private static DutyInput Family
    {
        get
        {
            ChainFamily[] others = [.. ChainFamily.All.Where(f => !f.IsUsual)];
            return new DutyInput(
                "family", [.. others.Select(f => $"family {f}")], card => [.. others.Select(f => f == card.Family ? 1.0 : 0.0)]);
        }
    }

    private static DutyInput Number(string name, string column, Func<ChainCard, double?> value) =>
        new(name, [column], card => value(card) is > 0 and < double.PositiveInfinity and var v ? [Math.Log(v)] : null);

    private static DutyInput State<TState>(string name, Func<ChainCard, TState?> state, TState ordinary)
        where TState : struct, Enum
    {
        TState[] others = [.. Enum.GetValues<TState>().Where(s => !s.Equals(ordinary))];
        return new DutyInput(
            name,
            [.. others.Select(s => $"{name} {s}")],
            card => state(card) is { } s ? [.. others.Select(other => other.Equals(s) ? 1.0 : 0.0)] : null);
    }
}
