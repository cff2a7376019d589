using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;

namespace WearWatch.Plant.Planning;

/// <summary>Chains that run together must stay alike, so that they are shortened together.</summary>
internal static class ShortenedTogether
{
    /// <summary>The faces of chains of which those of a group have its first date.</summary>
    public static Dictionary<string, ChainFace> Of(Dictionary<string, (ChainFace Face, SwapTask Task)> chains)
    {
        var faces = chains.ToDictionary(c => c.Key, c => c.Value.Face);
        foreach (var group in chains.Where(c => c.Value.Task.ParallelGroup.Length > 0 && c.Value.Face.Row.ToCard().MayBeShortened)
            .GroupBy(c => (c.Value.Task.Line, c.Value.Task.ParallelGroup), c => c.Key))
        {
            if (group.Select(name => faces[name]).Where(f => f.ShortenFrom is not null).MinBy(f => f.ShortenFrom)
                is not { } first) continue;
            foreach (var name in group)
            {
                faces[name] = faces[name] with
                {
                    ShortenFrom = first.ShortenFrom,
                    ShortenPitches = first.ShortenPitches,
                    ShortenWith = [.. group.Where(other => other != name)],
                };
            }
        }

        return faces;
    }

    /// <summary>The shortenings within the horizon, each with the connecting links that join its chain again.</summary>
    public static IReadOnlyList<PlannedShortening> Within(PlanInput frame, IEnumerable<ChainFace> faces) =>
    [
        .. from face in faces
           where face.ShortenFrom < frame.HorizonEnd && !face.Row.HoldsLoad
           orderby face.Row.Name
           select PlannedShortening.Of(face.Row.Name, face.Row.Line, face.ShortenFrom!.Value, LinksOf(face), frame),
    ];

    // The even number of pitches that goes leaves an offset link where it is.
    private static IReadOnlyList<PartNeed> LinksOf(ChainFace face) =>
    [
        .. PartNeed.Of(face.Row.Family.Cut(PlanQuery.PitchesOf(face.Row)), PlanQuery.TypeOf(face.Row))
            .Where(need => need.Part.Kind == PartKind.ConnectingLink),
    ];
}
