using WearWatch.Chains;
using WearWatch.Phrases;

namespace WearWatch.Lubrication;

/// <summary>What the place or the material of a chain forbids or asks of its oil, before any table is read.</summary>
/// <param name="Words">What, in words.</param>
/// <param name="StopsTables">Whether no grade and no amount of the tables may be said: they do not cover it.</param>
/// <param name="Source">Who says so.</param>
public sealed record OilCaution(Phrase Words, bool StopsTables, string Source)
{
    private const string Practice = "common practice";

    /// <summary>The cautions of a chain, most urgent first.</summary>
    public static IReadOnlyList<OilCaution> For(ChainCard card) => [.. Of(card)];

    private static IEnumerable<OilCaution> Of(ChainCard card)
    {
        if (card.Material == ChainMaterial.Plastic)
            yield return new(
                $"A plastic chain is not oiled: run it dry, or with water or soap as its maker says.", StopsTables: true,
                Practice);
        switch (card.OilPlace)
        {
            case OilPlace.ExplosiveAtmosphere:
                yield return new(
                    $"Explosive atmosphere: no spray, no hot work, only with the site's permit; ask the maker for an oil whose "
                    + $"flash point suits.", StopsTables: true, Practice);
                break;
            case OilPlace.DryFilm:
                yield return new(
                    $"No wet oil here: a dry film of PTFE or graphite, renewed as its maker says.", StopsTables: true,
                    "docs/references.md [75]");
                break;
            case OilPlace.Food:
                yield return new(
                    $"Food: only a lubricant registered for incidental contact (H1). The viscosity below holds, not the mineral "
                    + $"oil.", StopsTables: false, Practice);
                break;
        }
    }
}
