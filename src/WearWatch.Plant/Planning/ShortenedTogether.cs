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
}
