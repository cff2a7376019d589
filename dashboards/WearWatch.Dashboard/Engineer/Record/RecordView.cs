using WearWatch.Lives;
using WearWatch.Plant.Books;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineer.Record;

/// <summary>What the page of the forecast record shows.</summary>
public sealed record RecordView
{
    /// <summary>Confidence of every binomial band on the page.</summary>
    public const double Confidence = 0.95;

    private const int FewestToJudge = 20;

    /// <summary>How the forecasts turned out at each share of life.</summary>
    public required IReadOnlyList<(double Share, TrackRecord Record)> ByShare { get; init; }

    /// <summary>How those at the share looked at turned out, by group; the largest group first.</summary>
    public required IReadOnlyList<(string Group, TrackRecord Record)> ByGroup { get; init; }

    /// <summary>Those at the share looked at.</summary>
    public required TrackRecord Looked { get; init; }

    public required RecordFilter Filter { get; init; }

    public required int Lives { get; init; }

    /// <summary>How many lives the making of forecasts has come through, if it is at it.</summary>
    public (int Done, int Of)? Progress { get; init; }

    /// <summary>What is assumed of how wear goes, and what was learned.</summary>
    public TaughtWear Taught { get; init; } = TaughtWear.Of(WearConstants.Default);

    public static RecordView Of(IReadOnlyList<RecordedForecast> forecasts, RecordFilter filter, (int, int)? progress = null)
    {
        var byShare = forecasts.ToLookup(f => f.AtShare);
        var looked = byShare[filter.AtShare].ToList();
        return new RecordView
        {
            ByShare = [.. RecordedForecast.Shares.Select(s => (s, TrackRecord.Of([.. byShare[s].Select(f => f.Score)])))],
            ByGroup = [.. looked.GroupBy(filter.GroupOf).OrderByDescending(g => g.Count())
                .ThenBy(g => g.Key, StringComparer.Ordinal)
                .Select(g => (g.Key, TrackRecord.Of([.. g.Select(f => f.Score)])))],
            Looked = TrackRecord.Of([.. looked.Select(f => f.Score)]),
            Filter = filter,
            Lives = byShare.Select(s => s.Count()).DefaultIfEmpty(0).Max(),
            Progress = progress,
        };
    }

    /// <summary>Whether an interval holds as often as it says, in words.</summary>
    public static Phrase Verdict(ObservedShare held, double stated)
    {
        if (held.Of < FewestToJudge) return $"too few to tell";
        var band = held.Band(Confidence);
        if (band.Contains(stated)) return $"as often as stated";
        return band.High < stated
            ? Phrase.Of($"too seldom: intervals are too narrow")
            : $"too often: intervals are wider than need be";
    }
}
