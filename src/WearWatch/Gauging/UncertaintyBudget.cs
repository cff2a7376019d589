using WearWatch.Phrases;

namespace WearWatch.Gauging;

/// <summary>What an elongation's uncertainty is made of, by JCGM 100: components in quadrature.</summary>
/// <remarks>
/// Limits that are all that is known of an error are taken as rectangular: <c>u = a/sqrt(3)</c>. With a measured new length L0,
/// <c>u2(e) = (u(L)/L0)2 + (L u(L0)/L0^2)2 + (alpha u(T))2</c>; against nominal the new chain's tolerance stands for the second
/// term. Source: docs/references.md [1].
/// </remarks>
public sealed class UncertaintyBudget
{
    private static readonly Phrase CommonPractice = $"common practice";

    private UncertaintyBudget(IReadOnlyList<UncertaintyComponent> components) => Components = components;

    /// <summary>The components.</summary>
    public IReadOnlyList<UncertaintyComponent> Components { get; }

    /// <summary>Standard uncertainty (k = 1) in percent of elongation.</summary>
    public double StandardUncertaintyPercent => InQuadrature(Components);

    /// <summary>Expanded uncertainty at k = 2, about 95 %, in percent of elongation.</summary>
    public double ExpandedUncertaintyPercent => 2 * StandardUncertaintyPercent;

    /// <summary>Standard deviation from one such measurement to the next, in percent of elongation.</summary>
    public double ScatterPercent => InQuadrature(Components.Where(c => c.Repeats));

    /// <summary>Share of a component in the variance, from 0 to 1.</summary>
    public double ShareOf(UncertaintyComponent component) =>
        Math.Pow(component.StandardUncertaintyPercent / StandardUncertaintyPercent, 2);

    /// <summary>The budget of a measurement.</summary>
    /// <param name="span">A measurement that the gauge does not refuse.</param>
    public static UncertaintyBudget Of(MeasuredSpan span) => new([.. ComponentsOf(span)]);

    private static IEnumerable<UncertaintyComponent> ComponentsOf(MeasuredSpan span)
    {
        var percentPerMm = 100 / (span.New?.LengthMm ?? span.NominalMm);
        if (span.New is not { SameTool: true })
            yield return new($"tool", percentPerMm * Rectangular(span.Instrument.MaximumErrorMm(span.LengthMm)), true,
                span.Instrument.Source);
        yield return new($"reading", percentPerMm * ReadingMm(span), true, ReadingSource(span));

        if (span.New is { } fresh)
        {
            var toolMm = fresh.SameTool ? 0 : Rectangular(fresh.Instrument.MaximumErrorMm(fresh.LengthMm));
            var stretch = span.LengthMm / fresh.LengthMm;
            yield return new(
                $"length when new", percentPerMm * stretch * Hypotenuse(toolMm, fresh.Instrument.ReadingUncertaintyMm), false,
                fresh.Instrument.Source);
        }
        else
        {
            yield return new($"tolerance of a new chain", Rectangular(span.NewLengthTolerancePercent / 2), false,
                $"half of 0 to +tolerance of the chain type");
        }

        var kelvin = span is { ChainTemperatureC: not null, ToolTemperatureC: not null } ? 2 : 5;
        yield return new($"temperature", 100 * Gauge.SteelExpansionPerKelvin * Rectangular(kelvin), false,
            $"within {kelvin} K, {CommonPractice}; docs/references.md [20]");

        // The reading is off by e/N one way or the other, and nobody knows which: standard deviation e/N.
        if (span is { LinksAlternate: true, FirstLink: FirstLink.NotTold } && int.IsOddInteger(span.Pitches))
            yield return new($"odd number of pitches", Math.Abs(Gauge.PercentOf(span)) / span.Pitches, false,
                $"geometry, docs/gauging.md");
    }

    /// <summary>The mean of n readings; or by how much they differ, when that is more than the graduation explains.</summary>
    private static double ReadingMm(MeasuredSpan span)
    {
        var n = span.LengthsMm.Count;
        var byGraduation = span.Instrument.ReadingUncertaintyMm / Math.Sqrt(n);
        return n < 3 ? byGraduation : Math.Max(byGraduation, StandardDeviation(span.LengthsMm) / Math.Sqrt(n));
    }

    private static Phrase ReadingSource(MeasuredSpan span) => span.LengthsMm.Count == 1
        ? Phrase.Of($"one reading, {CommonPractice}")
        : $"mean of {span.LengthsMm.Count} readings, {CommonPractice}";

    private static double StandardDeviation(IReadOnlyList<double> values)
    {
        var mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Count - 1));
    }

    private static double Rectangular(double halfWidth) => halfWidth / Math.Sqrt(3);

    private static double Hypotenuse(double a, double b) => Math.Sqrt(a * a + b * b);

    private static double InQuadrature(IEnumerable<UncertaintyComponent> components) =>
        Math.Sqrt(components.Sum(c => c.StandardUncertaintyPercent * c.StandardUncertaintyPercent));
}
