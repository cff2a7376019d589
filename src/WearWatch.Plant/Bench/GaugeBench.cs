using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Chains.Links;
using WearWatch.Gauging;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Bench;

/// <summary>Answers what a length over pitches means.</summary>
/// <remarks>
/// Names: <c>type</c> or <c>pitch_mm</c> and <c>family</c>; <c>pitches</c>; <c>length</c> (several with semicolons) or
/// <c>inside</c> and
/// <c>outside</c> of the end rollers; <c>unit</c>; <c>tool</c>, <c>tape_class</c>, <c>from_hook</c>, <c>graduation_mm</c>,
/// <c>largest_error_mm</c>; <c>first_link</c>; <c>temperature_c</c>, <c>tool_temperature_c</c>; <c>new_length</c>,
/// <c>same_tool</c>; <c>taut</c>, <c>load_n</c>;
/// of a round link what <see cref="LinkBench"/> knows; <c>limit_pct</c>, or what
/// <see cref="LimitBench"/> knows, <c>lifts</c> among it; <c>found</c>: points of the checklist where something was found, with
/// commas between; <c>confirmed</c>.
/// </remarks>
public static class GaugeBench
{
    private const double LongestPitchMm = 2000;

    /// <summary>What the measured length means, or what of the question cannot be read.</summary>
    public static BenchAnswer<GaugeCalculation> Answer(Asked asked)
    {
        var type = asked.Type("type");
        var pitchMm = asked.Number("pitch_mm", 0.1, LongestPitchMm) ?? type?.PitchMm?.Value;
        if (pitchMm is null && asked.Wrong.Count == 0) asked.Refuse("pitch_mm", $"Give the pitch or the chain type.");
        var pitches = asked.Whole("pitches", 1, 100_000);
        if (pitches is null && !asked.Told("pitches")) asked.Refuse("pitches", $"How many pitches did you measure over?");
        var lengthsMm = LengthsMm(asked);
        var instrument = InstrumentOf(asked);
        var newLength = asked.Length("new_length", asked.Unit("unit"));
        var loadN = asked.Number("load_n", 0.001, Held.MostNewtons);
        var limit = asked.Number("limit_pct", 0.01, 9.99);
        var @case = LimitBench.Case(asked, type);
        var links = LinksOf(asked, type, @case, pitches, lengthsMm);
        var verdict = LimitRules.For(@case);
        var found = Found(asked, @case);
        if (limit > verdict.Governing.Percent && @case.Lifts)
            asked.Refuse("limit_pct", $"{LiftingCard.LimitTooHigh(verdict.Governing)}");
        if (asked.Wrong.Count > 0 || pitchMm is null || pitches is null)
            return new BenchAnswer<GaugeCalculation>.Refused(asked.Wrong);

        var span = new MeasuredSpan
        {
            PitchMm = pitchMm.Value,
            Pitches = pitches.Value,
            LengthsMm = lengthsMm,
            Instrument = instrument,
            Family = @case.Family,
            FirstLink = asked.Word<FirstLink>("first_link") ?? FirstLink.NotTold,
            ChainTemperatureC = asked.Number("temperature_c"),
            ToolTemperatureC = asked.Number("tool_temperature_c"),
            ListedTolerancePercent = type?.NewLengthTolerancePercent?.Value,
            Held = Held.From(asked.Tick("taut"), loadN),
            New = newLength is { } fresh ? new NewLength(fresh.Millimetres, instrument, asked.Tick("same_tool")) : null,
        };
        if (asked.Wrong.Count > 0) return new BenchAnswer<GaugeCalculation>.Refused(asked.Wrong);
        var governing = limit is { } own
            ? new ReplacementLimit(own, LimitReason.SetByPlant, "as entered")
            {
                Rule = $"as entered",
                PlanFromPercent = @case.Lifts ? verdict.Governing.PlanFromPercent : null,
            }
            : verdict.Governing;
        return Sheet(asked, span, elongation => new GaugeCalculation
        {
            Type = type,
            Span = span,
            HoldsLoad = @case.Lifts,
            Found = found,
            Elongation = elongation,
            Doubt = null,
            Budget = UncertaintyBudget.Of(span),
            Limit = governing,
            Limits = verdict,
            Links = links,
            Proposal = SpanProposal.For(new SpanCase
            {
                Span = span,
                Limit = governing,
                ChainPitches = asked.Whole("chain_pitches", 1, 100_000),
                HoldsLoad = @case.Lifts,
                ElongationPercent = elongation.Percent,
            }),
        });
    }

    /// <summary>What its links say, when they were measured; a length over as many links as its table has counts, too.</summary>
    private static LinkCalculation? LinksOf(
        Asked asked, ChainType? type, LimitCase @case, int? pitches, IReadOnlyList<double> lengthsMm)
    {
        if (!LinkBench.IsAsked(asked) || @case.PitchMm is null || asked.Wrong.Count > 0) return null;
        var counts = lengthsMm.Count > 0 && pitches == (asked.Whole("links", 2, 41) ?? LinkTable.UsualLinks);
        return LinkBench.Of(asked, type, @case, counts ? lengthsMm.Average() : null);
    }

    /// <summary>The points of the checklist at which something was found.</summary>
    private static List<CheckPoint> Found(Asked asked, LimitCase @case)
    {
        var points = @case.Family.CheckPoints(@case.Lifts);
        var found = new List<CheckPoint>();
        foreach (var word in asked.Text("found").Split([',', ';', ' '], StringSplitOptions.RemoveEmptyEntries))
        {
            var point = points.FirstOrDefault(p => FileWords.Of(p.Point).Equals(word, StringComparison.OrdinalIgnoreCase));
            if (point is not null) found.Add(point);
            else asked.Refuse("found",
                $"'{word}' is none of {string.Join(", ", points.Select(p => FileWords.Of(p.Point)))}.");
        }

        return found;
    }

    private static BenchAnswer<GaugeCalculation> Sheet(
        Asked asked, MeasuredSpan span, Func<Elongation, GaugeCalculation> calculation)
    {
        return Gauge.Measure(span) switch
        {
            GaugeOutcome.Refused refused =>
                new BenchAnswer<GaugeCalculation>.Refused([new Refusal(refused.Field, refused.Reason)]),
            GaugeOutcome.Measured measured => Answered(measured.Elongation, null),
            GaugeOutcome.Doubted doubted => Answered(doubted.Elongation, asked.Tick("confirmed") ? null : doubted.Reason),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

        BenchAnswer<GaugeCalculation> Answered(Elongation elongation, Phrase? doubt) =>
            new BenchAnswer<GaugeCalculation>.Answered(calculation(elongation) with { Doubt = doubt });
    }

    private static IReadOnlyList<double> LengthsMm(Asked asked)
    {
        var unit = asked.Unit("unit");
        if (asked.Told("inside") || asked.Told("outside"))
        {
            if (!asked.Told("inside") || !asked.Told("outside"))
            {
                asked.Refuse(asked.Told("inside") ? "outside" : "inside",
                    $"Measure both, inside and outside of the end rollers: their mean is the length.");
                return [];
            }

            if (asked.Length("inside", unit) is not { } inside || asked.Length("outside", unit) is not { } outside) return [];
            if (outside > inside) return [MeasuredSpan.OverRollersMm(inside.Millimetres, outside.Millimetres)];
            asked.Refuse("outside", $"The outside length must be the longer one.");
            return [];
        }

        if (!asked.Told("length")) asked.Refuse("length", $"A length is wanted, such as 609.6 or 24 3/16\".");
        return [.. asked.Lengths("length", unit).Select(l => l.Millimetres)];
    }

    private static Instrument InstrumentOf(Asked asked)
    {
        var largest = asked.Number("largest_error_mm", 0, 100);
        var graduation = asked.Number("graduation_mm", 0.001, 100);
        return asked.Word<Tool>("tool") switch
        {
            Tool.Caliper => new Instrument.Caliper(largest ?? 0.05, graduation ?? 0.01),
            Tool.Sensor => new Instrument.Sensor(largest ?? 0.05),
            _ => new Instrument.Tape(asked.Word<TapeClass>("tape_class") ?? TapeClass.II, asked.Tick("from_hook"), graduation
                ?? 1),
        };
    }
}
