using WearWatch.Chains;
using WearWatch.Learning;

namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>One thing that could be done to a chain, and what that would do to its life.</summary>
/// <param name="What">What would be done.</param>
/// <param name="Change">What the fleet lets expect of it.</param>
public sealed record PossibleChange(Phrase What, RateChange Change)
{
    private const double AFifthLess = 0.8;

    /// <summary>All that could be done to a chain, what helps most first.</summary>
    public static IReadOnlyList<PossibleChange> Of(ChainCard card, FleetModel model) =>
        [.. Changes(card, model).Select(c => new PossibleChange(c.What, model.Change(card, c.Card)))
            .OrderByDescending(w => w.Change.LifeFactor)];

    private static IEnumerable<(Phrase What, ChainCard Card)> Changes(ChainCard card, FleetModel model)
    {
        ChainCard With(Func<Duty, Duty> change) => card with { Duty = change(card.Duty) };
        if (card.Duty.Lubrication is > LubricationState.Auto)
            yield return ($"oil it automatically", With(d => d with { Lubrication = LubricationState.Auto }));
        if (card.Duty.Lubrication is > LubricationState.Manual)
            yield return ($"oil it by hand, when it is due", With(d => d with { Lubrication = LubricationState.Manual }));
        if (model.Uses(FleetModel.HoursSinceOiling) && card.Duty.HoursSinceOiling is { } age)
            yield return ($"oil it twice as often", With(d => d with { HoursSinceOiling = age / 2 }));
        if (card.Duty.Dust is DustLevel.Heavy)
            yield return ($"keep the heavy dust off", With(d => d with { Dust = DustLevel.Moderate }));
        if (card.Duty.Dust is > DustLevel.Clean)
            yield return ($"enclose it: no dust", With(d => d with { Dust = DustLevel.Clean }));
        if (card.Duty.RelativeLoad is { } load)
            yield return ($"a fifth less load", With(d => d with { RelativeLoad = load * AFifthLess }));
        if (card.Duty.SpeedMetresPerSecond is { } speed)
            yield return ($"a fifth slower", With(d => d with { SpeedMetresPerSecond = speed * AFifthLess }));
        if (SizeUp(card) is { } larger) yield return larger;
    }

    /// <summary>The next size of the same kind: the same pull spreads over a larger joint, at the same speed.</summary>
    private static (Phrase What, ChainCard Card)? SizeUp(ChainCard card)
    {
        if (card.Duty.RelativeLoad is not { } load || ChainCatalogue.Find(card.ChainType) is not { JointAreaMm2: { } area } now)
            return null;
        var next = ChainCatalogue.All
            .Where(t => t.Standard == now.Standard && t.Family == now.Family && t.Strands == now.Strands
                && t.JointAreaMm2 is not null && t.PitchMm is { } p && p.Value > card.PitchMm)
            .MinBy(t => t.PitchMm!.Value.Value);
        if (next is not { PitchMm: { } pitch, JointAreaMm2: { } larger }) return null;
        return ($"one size up: {next.Designation}", card with
        {
            ChainType = next.Designation,
            PitchMm = pitch.Value,
            Duty = card.Duty with { RelativeLoad = load * area.Value / larger.Value },
        });
    }
}
