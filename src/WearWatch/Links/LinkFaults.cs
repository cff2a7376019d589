using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Links;

/// <summary>Checks measures of links before they are kept: only what no link has is refused, a bad link never is.</summary>
public static class LinkFaults
{
    private const double ShortestShare = 0.97;
    private const double LongestShare = 1.5;
    private const double ThinnestShare = 0.3;
    private const double ThickestShare = 1.12;

    /// <summary>What cannot be or is missing; empty when all is well.</summary>
    /// <param name="told">What was measured.</param>
    /// <param name="table">The chain's table.</param>
    public static IReadOnlyList<LinkFault> Of(MeasuredLinks told, LinkTable table)
    {
        if ((told.OneLinkMm ?? told.SeveralLinksMm ?? told.D1Mm ?? told.D2Mm) is null)
            return [new(nameof(told.OneLinkMm), $"Measure at least one: a link's length, a length over links, or a diameter.")];
        return
        [
            .. Length(nameof(told.OneLinkMm), told.OneLinkMm, table.Size.PitchMm, $"one link"),
            .. OverLinks(told, table),
            .. Diameter(nameof(told.D1Mm), told.D1Mm, table), .. Diameter(nameof(told.D2Mm), told.D2Mm, table),
        ];
    }

    private static IEnumerable<LinkFault> OverLinks(MeasuredLinks told, LinkTable table)
    {
        if (told.SeveralLinksMm is null) yield break;
        if (told.Links is { } links && links != table.Links)
            yield return new(nameof(told.Links),
                $"The limit of this chain is for {table.Links} links; measure over {table.Links}, not over {links}.");
        if (told.Tool is Tool.Sensor)
            yield return new(nameof(told.Tool), $"Links are measured with a caliper, long stretches with a tape.");
        foreach (var fault in Length(
            nameof(told.SeveralLinksMm), told.SeveralLinksMm, table.NominalSeveralMm, $"{table.Links} links"))
            yield return fault;
    }

    private static IEnumerable<LinkFault> Length(string field, double? toldMm, double newMm, Phrase over)
    {
        if (toldMm is { } mm && !(mm >= ShortestShare * newMm && mm <= LongestShare * newMm))
            yield return new(field, $"{mm:0.###} mm is no length over {over} of this chain, "
                + $"which are {newMm:0.#} mm when new. "
                + $"Check the count, the unit and the decimal point.");
    }

    private static IEnumerable<LinkFault> Diameter(string field, double? toldMm, LinkTable table)
    {
        var newMm = table.Size.DiameterMm;
        if (toldMm is { } mm && !(mm >= ThinnestShare * newMm && mm <= ThickestShare * newMm))
            yield return new(field, $"{mm:0.###} mm is no diameter of a link of {newMm:0.###} mm. "
                + $"Check the unit and the decimal point.");
    }
}
