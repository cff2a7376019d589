using CsCheck;
using WearWatch.Chains.Families;
using WearWatch.Gauging;

namespace WearWatch.Tests.Gauging;

public sealed class UncertaintyBudgetTests
{
    private static readonly MeasuredSpan TwoFeet = new() { PitchMm = 25.4, Pitches = 24, LengthsMm = [612] };

    // Computed by JCGM 100 [1] from the published tape class [2]: tape 0.5/sqrt(3) = 0.289 mm, two ends to half a millimetre
    // 0.408 mm, together 0.500 mm; tolerance 0.075/sqrt(3) = 0.043 %; temperature 5/sqrt(3) K = 0.003 %.
    [Fact]
    public void Two_feet_of_inch_pitch_by_a_class_two_tape_are_known_to_nineteen_hundredths_of_a_percent()
    {
        var budget = UncertaintyBudget.Of(TwoFeet);

        Assert.Equal(0.289 / 6.096, Component(budget, "tool"), 1e-4);
        Assert.Equal(0.408 / 6.096, Component(budget, "reading"), 1e-4);
        Assert.Equal(0.0433, Component(budget, "tolerance of a new chain"), 1e-4);
        Assert.Equal(0.0033, Component(budget, "temperature"), 1e-4);
        Assert.Equal(0.093, budget.StandardUncertaintyPercent, 5e-4);
        Assert.Equal(0.19, budget.ExpandedUncertaintyPercent, 5e-3);
    }

    // The same computation for other lengths; over one metre the tape's own error is larger, 0.7 mm.
    [Theory]
    [InlineData(25.4, 48, 0.13)]
    [InlineData(25.4, 12, 0.34)]
    [InlineData(15.875, 10, 0.64)]
    public void Fewer_pitches_are_less_sure(double pitchMm, int pitches, double expandedPercent)
    {
        var span = new MeasuredSpan { PitchMm = pitchMm, Pitches = pitches, LengthsMm = [pitchMm * pitches] };

        Assert.Equal(expandedPercent, UncertaintyBudget.Of(span).ExpandedUncertaintyPercent, 5e-3);
    }

    [Fact]
    public void Up_to_a_metre_the_budget_of_the_usual_tool_is_that_of_the_plain_gauge() =>
        Gen.Select(Gen.Double[5, 60], Gen.Int[1, 8], Gen.Enum<Tool>()).Where((p, n, _) =>
            p * n * 2 <= 990).Sample((pitchMm, pairs, tool) =>
        {
            var span = new MeasuredSpan
            {
                PitchMm = pitchMm,
                Pitches = 2 * pairs,
                LengthsMm = [2 * pairs * pitchMm],
                Instrument = Instrument.Usual(tool),
            };
            var plain = Assert.IsType<GaugeOutcome.Measured>(Gauge.Measure(pitchMm, 2 * pairs, span.LengthMm, tool)).Elongation;
            var full = Assert.IsType<GaugeOutcome.Measured>(Gauge.Measure(span)).Elongation;

            // 0.1 %: the seating of calipers and sensors is rounded to four digits.
            return Math.Abs(full.StandardUncertaintyPercent / plain.StandardUncertaintyPercent - 1) < 1e-3
                && Math.Abs(full.ScatterPercent / plain.ScatterPercent - 1) < 1e-3;
        });

    // The prognosis weighs readings by these figures: half a millimetre by tape, 0.12 mm by caliper. Common practice.
    [Theory]
    [InlineData(Tool.Tape, 0.5)]
    [InlineData(Tool.Caliper, 0.12)]
    [InlineData(Tool.Sensor, 0.12)]
    public void Readings_scatter_by_the_tool_over_the_nominal_length(Tool tool, double scatterMm) =>
        Assert.Equal(100 * scatterMm / 609.6,
            Assert.IsType<GaugeOutcome.Measured>(Gauge.Measure(25.4, 24, 612, tool)).Elongation.ScatterPercent, 1e-12);

    // Source: docs/references.md [2], the table's examples at 1, 2 and 5 m; from the hook c is added; lengths are rounded up.
    [Theory]
    [InlineData(TapeClass.I, 1000, false, 0.2)]
    [InlineData(TapeClass.I, 2000, false, 0.3)]
    [InlineData(TapeClass.I, 5000, false, 0.6)]
    [InlineData(TapeClass.II, 1000, false, 0.5)]
    [InlineData(TapeClass.II, 610, false, 0.5)]
    [InlineData(TapeClass.II, 2000, false, 0.7)]
    [InlineData(TapeClass.II, 5000, false, 1.3)]
    [InlineData(TapeClass.III, 1000, false, 1.0)]
    [InlineData(TapeClass.III, 2000, false, 1.4)]
    [InlineData(TapeClass.III, 5000, false, 2.6)]
    [InlineData(TapeClass.I, 1000, true, 0.3)]
    [InlineData(TapeClass.II, 1000, true, 0.7)]
    [InlineData(TapeClass.III, 1000, true, 1.3)]
    public void A_tape_is_as_good_as_its_class_says(TapeClass @class, double lengthMm, bool fromHook, double largestErrorMm) =>
        Assert.Equal(largestErrorMm, new Instrument.Tape(@class, fromHook).MaximumErrorMm(lengthMm), 1e-12);

    [Fact]
    public void A_new_length_by_another_tape_doubles_the_tools_share_and_by_the_same_tape_it_drops_out()
    {
        var fresh = new NewLength(609.6, new Instrument.Tape());
        var other = UncertaintyBudget.Of(TwoFeet with { LengthsMm = [609.6], New = fresh });
        var same = UncertaintyBudget.Of(TwoFeet with { LengthsMm = [609.6], New = fresh with { SameTool = true } });

        Assert.Equal(0.5 * Math.Sqrt(2) / 6.096,
            Quadrature(Component(other, "tool"), Component(other, "reading"), Component(other, "length when new")), 1e-6);
        Assert.Equal(0.408248 * Math.Sqrt(2) / 6.096, Quadrature(Component(same, "reading"), Component(same, "length when new")),
            1e-6);
    }

    [Fact]
    public void Four_readings_halve_the_share_of_reading_unless_they_differ_by_more()
    {
        var alike = UncertaintyBudget.Of(TwoFeet with { LengthsMm = [612, 612, 612, 612] });
        var unlike = UncertaintyBudget.Of(TwoFeet with { LengthsMm = [609, 611, 613, 615] });

        Assert.Equal(Component(UncertaintyBudget.Of(TwoFeet), "reading") / 2, Component(alike, "reading"), 1e-12);
        // Standard deviation of 609, 611, 613, 615 is sqrt(20/3); of their mean half of it.
        Assert.Equal(Math.Sqrt(20.0 / 3) / 2 / 6.096, Component(unlike, "reading"), 1e-9);
    }

    // Geometry: a true 2 % over 9 pitches reads 1.78 or 2.22, so about 0.22 % either way.
    [Fact]
    public void An_odd_number_of_pitches_is_less_sure_while_nobody_tells_the_first_link()
    {
        var odd = new MeasuredSpan { PitchMm = 25.4, Pitches = 9, LengthsMm = [9 * 25.4 * 1.02] };

        Assert.Equal(2.0 / 9, Component(UncertaintyBudget.Of(odd), "odd number of pitches"), 1e-9);
        Assert.DoesNotContain(UncertaintyBudget.Of(odd with { FirstLink = FirstLink.Inner }).Components, c =>
            c.Name.ToString().StartsWith("odd", StringComparison.Ordinal));
        Assert.DoesNotContain(UncertaintyBudget.Of(odd with { Family = ChainFamily.Named("offset_link") }).Components, c =>
            c.Name.ToString().StartsWith("odd", StringComparison.Ordinal));
        Assert.DoesNotContain(UncertaintyBudget.Of(odd with { Pitches = 10 }).Components, c =>
            c.Name.ToString().StartsWith("odd", StringComparison.Ordinal));
    }

    [Fact]
    public void Shares_of_the_variance_add_up_to_one()
    {
        var budget = UncertaintyBudget.Of(TwoFeet);

        Assert.Equal(1, budget.Components.Sum(budget.ShareOf), 1e-12);
    }

    private static double Component(UncertaintyBudget budget, string name) =>
        Assert.Single(budget.Components, c => c.Name.ToString() == name).StandardUncertaintyPercent;

    private static double Quadrature(params double[] parts) => Math.Sqrt(parts.Sum(p => p * p));
}
