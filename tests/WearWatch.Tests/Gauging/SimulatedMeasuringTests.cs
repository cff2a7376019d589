using WearWatch.Gauging;

namespace WearWatch.Tests.Gauging;

/// <summary>The uncertainty budget against measuring simulated error by error: what JCGM 101 does in place of formulas.</summary>
/// <remarks>20,000 draws give a standard deviation to 0.5 %; 3 % are allowed.</remarks>
public sealed class SimulatedMeasuringTests
{
    private const int Draws = 20_000;
    private const double Allowed = 0.03;

    [Theory]
    [InlineData(25.4, 24, TapeClass.II, 1.5)]
    [InlineData(25.4, 48, TapeClass.II, 0.4)]
    [InlineData(12.7, 40, TapeClass.I, 2.9)]
    [InlineData(100, 12, TapeClass.III, 2.0)]
    public void Readings_by_tape_scatter_about_the_truth_as_the_budget_says(double pitchMm, int pitches, TapeClass @class,
        double percent)
    {
        var random = new Random(20260105);
        var tape = new Instrument.Tape(@class);
        var errors = Simulate(() =>
        {
            // A chain of the maker's tolerance, worn, its temperature not known to 5 K; a tape of its class, read at two ends.
            var newMm = pitchMm * pitches * (1 + Within(random, 0.075) / 100 + 0.00075);
            var trueMm = newMm + pitchMm * pitches * percent / 100;
            var readMm = trueMm * (1 + Gauge.SteelExpansionPerKelvin * Within(random, 5))
                + Within(random, tape.MaximumErrorMm(trueMm)) + Within(random, 0.5) + Within(random, 0.5);
            return Percent(Span(pitchMm, pitches, readMm) with { Instrument = tape }) - percent;
        });

        var budget =
            UncertaintyBudget.Of(Span(pitchMm, pitches, pitchMm * pitches * (1 + percent / 100)) with { Instrument = tape });
        Assert.Equal(1, StandardDeviation(errors) / budget.StandardUncertaintyPercent, Allowed);
    }

    [Fact]
    public void A_length_when_new_is_worth_what_the_budget_says()
    {
        var random = new Random(20260106);
        var tape = new Instrument.Tape();
        var errors = Simulate(() =>
        {
            var newMm = 609.6 * (1 + Within(random, 0.075) / 100);
            var wornMm = newMm * 1.02;
            double Read(double mm) => mm + Within(random, 0.5) + Within(random, 0.5) + Within(random, 0.5);
            var span = Span(25.4, 24, Read(wornMm) * (1 + Gauge.SteelExpansionPerKelvin * Within(random, 5)));
            return Percent(span with { New = new NewLength(Read(newMm), tape) }) - 2;
        });

        var budget = UncertaintyBudget.Of(Span(25.4, 24, 609.6 * 1.02) with { New = new NewLength(609.6, tape) });
        Assert.Equal(1, StandardDeviation(errors) / budget.StandardUncertaintyPercent, Allowed);
    }

    [Fact]
    public void An_odd_count_begun_with_either_link_scatters_as_the_budget_says()
    {
        var random = new Random(20260107);
        var errors = Simulate(() =>
        {
            var growing = random.Next(2) == 0 ? 4 : 5;
            var lengthMm = 9 * 25.4 + growing * 2 * 25.4 * 0.02 + Within(random, 0.5) + Within(random, 0.5) + Within(random, 0.5);
            return Percent(Span(25.4, 9, lengthMm)) - 2;
        });

        var components = UncertaintyBudget.Of(Span(25.4, 9, 9 * 25.4 * 1.02)).Components
            .Where(c => c.Name.ToString() is "tool" or "reading" or "odd number of pitches");
        var expected = Math.Sqrt(components.Sum(c => c.StandardUncertaintyPercent * c.StandardUncertaintyPercent));
        Assert.Equal(1, StandardDeviation(errors) / expected, Allowed);
    }

    private static double[] Simulate(Func<double> error) => [.. Enumerable.Range(0, Draws).Select(_ => error())];

    private static double Within(Random random, double half) => half * (2 * random.NextDouble() - 1);

    private static double StandardDeviation(double[] values)
    {
        var mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1));
    }

    private static MeasuredSpan Span(double pitchMm, int pitches, double lengthMm) =>
        new() { PitchMm = pitchMm, Pitches = pitches, LengthsMm = [lengthMm] };

    private static double Percent(MeasuredSpan span) =>
        Assert.IsType<GaugeOutcome.Measured>(Gauge.Measure(span)).Elongation.Percent;
}
