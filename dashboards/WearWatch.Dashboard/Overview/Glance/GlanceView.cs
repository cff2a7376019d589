using WearWatch.Dashboard.Overview.Notices;
using WearWatch.Plant.Settings;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.Glance;

/// <summary>How many chains are in a condition.</summary>
/// <param name="Condition">The condition, of chains that lift apart from the others.</param>
/// <param name="Chains">How many.</param>
/// <param name="LiftingApart">Whether the plant has chains that lift, so that the others are listed without them.</param>
public sealed record ConditionCount(ShownCondition Condition, int Chains, bool LiftingApart)
{
    /// <summary>The list of these chains.</summary>
    public string Link =>
        $"/chains?condition={Condition.Style}{(LiftingApart && !Condition.HoldsLoad ? "&lifts=no" : "")}";
}

/// <summary>The chains whose early date falls into a week.</summary>
/// <param name="Monday">The week's Monday; for the first week, what has come due before counts in.</param>
/// <param name="Chains">How many.</param>
/// <param name="NotPlanned">For how many of them no swap is planned.</param>
/// <param name="HeightPercent">Height of its bar over the highest.</param>
public sealed record WeekLoad(DateOnly Monday, int Chains, int NotPlanned, int HeightPercent)
{
    /// <summary>The list of what comes due up to the end of the week.</summary>
    public string Link => FormattableString.Invariant($"/chains?due={Monday.AddDays(7):yyyy-MM-dd}");
}

/// <summary>One line's chains; what comes due next after what is due already.</summary>
public sealed record LineSummary(string Line, int Chains, IReadOnlyList<ConditionCount> Conditions, DateTimeOffset? NextDue)
{
    /// <summary>The list of the line's chains.</summary>
    public string Link => "/chains?line=" + Uri.EscapeDataString(Line);
}

/// <summary>A chain that wants oil.</summary>
public sealed record OilDue(string Chain, string Line, DateTimeOffset At, bool Overdue);

/// <summary>How many of a line's chains want oil.</summary>
public sealed record OilByLine(string Line, int Now, int Soon)
{
    /// <summary>The list of the line's chains, what wants oil first.</summary>
    public string Link => "/chains?sort=lubrication&line=" + Uri.EscapeDataString(Line);
}

/// <summary>The newest reading of a chain.</summary>
public sealed record LatestReading(
    string Chain, string Line, double? ElongationPct, bool Waiting, string ToldBy, DateTimeOffset At);

/// <summary>The plant at a glance: what the page draws, with nothing left to work out.</summary>
public sealed record GlanceView
{
    /// <summary>How far ahead the strip of weeks looks.</summary>
    public const int WeeksAhead = 12;

    /// <summary>How far ahead oiling is shown.</summary>
    public static readonly TimeSpan OilAhead = TimeSpan.FromDays(7);

    public required PlantTime Time { get; init; }

    public required int Chains { get; init; }

    public required IReadOnlyList<ConditionCount> Conditions { get; init; }

    public required IReadOnlyList<WeekLoad> Weeks { get; init; }

    public required IReadOnlyList<LineSummary> Lines { get; init; }

    public required IReadOnlyList<OilDue> Oil { get; init; }

    /// <summary>The same by line, for a plant whose list would be too long.</summary>
    public IReadOnlyList<OilByLine> OilByLine =>
        [.. Oil.GroupBy(o => o.Line).OrderBy(g => g.Key, StringComparer.OrdinalIgnoreCase)
        .Select(g => new OilByLine(g.Key, g.Count(o => o.Overdue), g.Count(o => !o.Overdue)))];

    public required IReadOnlyList<NoticeLine> Notices { get; init; }

    public required NoticeCounts NoticeCounts { get; init; }

    public required IReadOnlyList<LatestReading> Arrivals { get; init; }

    /// <summary>Whether there is nothing to show yet.</summary>
    public bool IsEmpty => Chains == 0;

    /// <summary>How many come due within the weeks shown.</summary>
    public int DueAhead => Weeks.Sum(w => w.Chains);

    /// <summary>For how many of these no swap is planned.</summary>
    public int DueNotPlanned => Weeks.Sum(w => w.NotPlanned);

    /// <summary>The list of what comes due within the weeks shown and is planned, or is not.</summary>
    public string DueLink(bool planned) => FormattableString.Invariant(
        $"/chains?due={Weeks[^1].Monday.AddDays(7):yyyy-MM-dd}&planned={(planned ? "yes" : "no")}");

    /// <summary>Puts the plant together.</summary>
    public static GlanceView Of(
        IReadOnlyList<ChainNow> chains, IReadOnlyList<NoticeLine> notices, NoticeCounts counts,
        IReadOnlyList<LatestReading> arrivals, PlantTime time)
    {
        // Of chains that lift and of others each where the plant has such.
        ShownCondition[] kinds = [.. ConditionWords.All.Where(w => chains.Any(c => c.Condition.HoldsLoad == w.HoldsLoad))];
        return new GlanceView
        {
            Time = time,
            Chains = chains.Count,
            Conditions = Count(chains, kinds),
            Weeks = WeeksOf(chains, time),
            Lines = LinesOf(chains, kinds, time),
            Oil = [.. chains.Where(c => c.NextOilingAt < time.Now + OilAhead).OrderBy(c => c.NextOilingAt)
                .Select(c => new OilDue(c.Name, c.Line, c.NextOilingAt!.Value, c.NextOilingAt < time.Now))],
            Notices = notices,
            NoticeCounts = counts,
            Arrivals = arrivals,
        };
    }

    private static List<ConditionCount> Count(IReadOnlyCollection<ChainNow> chains, ShownCondition[] kinds)
    {
        var lifting = kinds.Any(k => k.HoldsLoad);
        return [.. kinds.Select(kind => new ConditionCount(kind, chains.Count(c => c.Condition == kind), lifting))];
    }

    private static List<WeekLoad> WeeksOf(IReadOnlyList<ChainNow> chains, PlantTime time)
    {
        var thisMonday = PlantTime.MondayOf(time.Today);
        var (counts, open) = (new int[WeeksAhead], new int[WeeksAhead]);
        foreach (var chain in chains.Where(c => c.EarlyDate is not null))
        {
            var week = (PlantTime.MondayOf(time.DateOf(chain.EarlyDate!.Value)).DayNumber - thisMonday.DayNumber) / 7;
            if (week >= WeeksAhead) continue;
            counts[Math.Max(0, week)]++;
            if (!chain.SwapIsPlanned) open[Math.Max(0, week)]++;
        }

        var highest = Math.Max(1, counts.Max());
        return [.. counts.Select((count, week) =>
            new WeekLoad(thisMonday.AddDays(7 * week), count, open[week], 100 * count / highest))];
    }

    private static List<LineSummary> LinesOf(IReadOnlyList<ChainNow> chains, ShownCondition[] kinds, PlantTime time) =>
        [.. chains.GroupBy(c => c.Line).OrderBy(g => g.Key, StringComparer.OrdinalIgnoreCase)
            .Select(g =>
                new LineSummary(
                    g.Key, g.Count(), Count([.. g], kinds), g.Where(c => c.EarlyDate > time.Now).Min(c => c.EarlyDate)))];
}
