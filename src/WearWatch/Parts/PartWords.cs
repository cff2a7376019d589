using WearWatch.Chains.Parts;
using WearWatch.Phrases;

namespace WearWatch.Parts;

/// <summary>What parts say, in sentences.</summary>
public static class PartWords
{
    /// <summary>What a track says first, with its figures and who sets the limit.</summary>
    public static Phrase Of(PartTrack track)
    {
        if (track.Governing is not { } finding) return $"Not measured since it was renewed: {track.Part.Words}.";
        Phrase what = $"{track.Part.Words} {finding.Reading.Mm:0.0#} mm";
        if (track.Limit is not { } limit) return $"No limit is known: {what}; enter your own.";
        var against = track.Part.Grows
            ? Phrase.Of($"limit {limit.Mm:0.0#} mm, {limit.Basis}")
            : $"least {limit.Mm:0.0#} mm, {limit.Basis}";
        return finding.Way is { IsReached: true }
            ? Phrase.Of($"Limit reached: {what} ({against}).")
            : $"{Math.Max(0, finding.Way!.Value.Percent):0} % of the way to its limit: {what} ({against}).";
    }
}
