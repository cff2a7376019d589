using WearWatch.Chains;
using WearWatch.Chains.Parts;
using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Gauging;
using WearWatch.Parts;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.OneChain;

/// <summary>A step of the early date's history.</summary>
public sealed record EarlyDateStep(
    DateTimeOffset MadeAt, DateTimeOffset? EarlyDate, double? ElongationPct, int ReadingsUsed, string Model);

/// <summary>One chain's page: all that it draws, with nothing left to work out.</summary>
public sealed record ChainView
{
    public required ChainFacts Facts { get; init; }

    public required PlantTime Time { get; init; }

    public required ChainDates Dates { get; init; }

    public required ChainHeadline Headline { get; init; }

    public required WearPicture Picture { get; init; }

    /// <summary>The odds of the date; null when nothing can be said.</summary>
    public required DateOdds? Odds { get; init; }

    public required IReadOnlyList<ReadingLine> Readings { get; init; }

    public required IReadOnlyList<EarlyDateStep> History { get; init; }

    /// <summary>How the forecast moved from reading to reading.</summary>
    public required IReadOnlyList<ForecastStep> Trail { get; init; }

    /// <summary>What made the date, in sentences.</summary>
    public required IReadOnlyList<Phrase> Why { get; init; }

    /// <summary>What is said of the planned swap; null when none is planned.</summary>
    public string? Swap => Facts.Swap is not { Start: { } start } swap ? null
        : (start > Time.Now
            ? T[$"Swap planned for {Time.Moment(start)}"]
            : T[$"The shutdown of its swap began on {Time.Moment(start)}"])
            + (swap.DecidedBy.Length > 0 ? ", " + T[$"decided by {swap.DecidedBy}"] : "")
            + (swap.Placing == SwapPlacing.Locked ? ", " + T["locked"] : "")
            + (start > Time.Now ? "." : ". " + T["Say whether it was done."]);

    public string Name => Facts.Row.Name;

    /// <summary>Pitches taken out of the chain that runs now.</summary>
    public int PitchesOut => Shortening.PitchesOut([.. Facts.Events.Select(e => e.ToEvent(Name))]);

    /// <summary>How long its sprockets have run.</summary>
    public SprocketHistory Sprockets =>
        SprocketHistory.Of(Facts.Assessment.Card, [.. Facts.Events.Select(e => e.ToEvent(Name))]) with
        {
            AreWorn = Facts.Parts.SprocketsAreWorn,
        };

    /// <summary>What was told of its parts where the card says otherwise.</summary>
    public FittedParts Fitted => FittedParts.Unlike(Facts.Assessment.Card, [.. Facts.Events.Select(e => e.ToEvent(Name))]);

    /// <summary>What to measure next time.</summary>
    public SpanProposal Proposal => SpanProposal.For(SpanCase.Of(Facts.Assessment.Card, Facts.Assessment.Limit) with
    {
        ElongationPercent = Facts.Assessment.ElongationPercent,
        LastPitches = Facts.Standing is [.., var last] ? last.Pitches : null,
        LastPlace = Facts.Standing is [.., { Place: var place }] ? place : "",
    });

    public ShownCondition Condition => Facts.Assessment.ShownCondition;

    /// <summary>What the measures of its links say first; empty while nobody has measured them.</summary>
    public string LinksSaid => Facts.Links is { Verdict.Findings.Count: > 0 } links ? T[links.Sentence] : "";

    /// <summary>Which of its own parts asks for a new chain; empty where none does.</summary>
    public string PartsSaid => T[Phrase.Join(" ", Facts.Parts.ToAttend.Where(t => t.Part.IsOfChain).Select(PartWords.Of))];

    /// <summary>Line, position and type, as far as they are known.</summary>
    public string Where => string.Join(" · ", new[]
    {
        Facts.Row.Line, Facts.Row.Position, Facts.Row.ChainType.Length > 0
            ? Facts.Row.ChainType
            : T[$"kind of chain: {Facts.Row.Family.Words}"],
    }.Where(t => t.Length > 0));

    /// <summary>Puts the page together.</summary>
    public static ChainView Of(ChainFacts facts, PlantTime time)
    {
        var (assessment, ahead) = (facts.Assessment, facts.Ahead);
        var dates = ChainDates.Of(ahead, facts.Calendar, time.Now);
        return new ChainView
        {
            Facts = facts,
            Time = time,
            Dates = dates,
            Headline = ChainHeadline.Of(assessment, ahead, dates, time),
            // The chart is of the length, and so are its dates.
            Picture = ChainPicture.Of(
                facts, ChainDates.Of(LimitAhead.ByLength(assessment), facts.Calendar, time.Now), time),
            Odds = ahead.Forecast.ProbabilityPassed > 0.95 || dates.Early is null
                ? null
                : DateOdds.Of(ahead.Forecast, ahead.HoursSince, facts.Calendar, time),
            Readings = ReadingLine.Of(facts),
            History = Steps(facts),
            Trail = ForecastTrail.Of(assessment),
            Why = [.. Explanation.Of(assessment, facts.Calendar, time.Now), .. WhyOtherwise(ahead)],
        };
    }

    /// <summary>What else than the length makes the date.</summary>
    private static IEnumerable<Phrase> WhyOtherwise(LimitAhead ahead) => ahead.IsByLength
        ? []
        : [$"Another limit comes before that of the length: {ahead.Cause}. The dates and the plan go by it."];

    /// <summary>The forecasts that moved the early date by a day or more, newest first.</summary>
    private static List<EarlyDateStep> Steps(ChainFacts facts)
    {
        var steps = new List<EarlyDateStep>();
        foreach (var row in facts.Forecasts)
        {
            if (steps.Count > 0 && Same(steps[^1], row.EarlyDate) && steps[^1].ReadingsUsed == row.ReadingsUsed) continue;
            steps.Add(new EarlyDateStep(row.MadeAt, row.EarlyDate, row.ElongationPct, row.ReadingsUsed, row.ModelVersion));
        }

        steps.Reverse();
        return steps;
    }

    private static bool Same(EarlyDateStep step, DateTimeOffset? early) =>
        step.EarlyDate == early || (step.EarlyDate is { } a && early is { } b && (a - b).Duration() < TimeSpan.FromDays(1));
}
