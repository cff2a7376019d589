using CsCheck;
using WearWatch.Gauging;

namespace WearWatch.Tests.Gauging;

public sealed class GaugeTests
{
    // Source: docs/references.md [23]: 18 pitches of 15.875 mm measured as 286.7 mm are worn by 0.33 %.
    [Fact]
    public void A_length_over_pitches_becomes_the_elongation_that_a_trade_paper_prints() =>
        Assert.Equal(0.33, Percent(Gauge.Measure(15.875, 18, 286.7, Tool.Tape)), 0.005);

    [Fact]
    public void Gauge_inverts_measure_for_any_chain_count_and_temperature() =>
        Gen.Select(Gen.Double[4, 1000], Gen.Int[1, 200], Gen.Double[-1.5, 9],
            Gen.Double[-30, 120]).Sample((pitchMm, pitches, percent, celsius) =>
        {
            var lengthMm = pitchMm * pitches * (1 + percent / 100) * (1 + Gauge.SteelExpansionPerKelvin * (celsius - 20));
            return Math.Abs(Percent(Gauge.Measure(pitchMm, pitches, lengthMm, Tool.Caliper, celsius)) - percent) < 1e-9;
        });

    [Fact]
    public void Gauge_inverts_measure_for_odd_counts_and_either_first_link() =>
        Gen.Select(Gen.Double[4, 200], Gen.Int[2, 60], Gen.Double[0, 5], Gen.Bool).Sample((pitchMm, pitches, percent, outer) =>
        {
            // An independent account of the geometry: pin to pin, outer links stay p, inner links grow by twice the wear w = e p.
            var growing = outer ? pitches / 2 : pitches - pitches / 2;
            var lengthMm = pitches * pitchMm + growing * 2 * pitchMm * percent / 100;
            var span = Span(pitchMm, pitches, lengthMm) with { FirstLink = outer ? FirstLink.Outer : FirstLink.Inner };
            return Math.Abs(Percent(Gauge.Measure(span)) - percent) < 1e-9;
        });

    // Source: docs/references.md [20]: a chain of 60 degrees against a cold tape reads 40 x 11.5e-6 = 0.046 % too long.
    [Fact]
    public void A_warm_chain_is_brought_back_to_twenty_degrees()
    {
        var cold = Percent(Gauge.Measure(25.4, 24, 612, Tool.Tape));
        var warm = Percent(Gauge.Measure(25.4, 24, 612 * (1 + 0.00046), Tool.Tape, 60));

        Assert.Equal(cold, warm, 1e-9);
    }

    [Fact]
    public void A_tape_as_warm_as_the_chain_needs_no_correction() =>
        Assert.Equal(
            Percent(Gauge.Measure(Span(25.4, 24, 612))),
            Percent(Gauge.Measure(Span(25.4, 24, 612) with { ChainTemperatureC = 45, ToolTemperatureC = 45 })), 1e-12);

    // Source: docs/references.md [4]: inside and outside of the same end rollers, halved.
    [Fact]
    public void Inside_and_outside_over_rollers_give_the_centre_distance_whatever_the_rollers_measure() =>
        Gen.Select(Gen.Double[50, 600], Gen.Double[3, 60]).Sample((centres, roller) =>
            Math.Abs(MeasuredSpan.OverRollersMm(centres - roller, centres + roller) - centres) < 1e-9);

    [Fact]
    public void Against_a_measured_new_length_the_makers_tolerance_drops_out()
    {
        var span = Span(25.4, 24, 612.0) with { New = new NewLength(610.2, new Instrument.Tape()) };

        Assert.Equal(100 * (612.0 - 610.2) / 610.2, Percent(Gauge.Measure(span)), 1e-12);
        Assert.DoesNotContain(UncertaintyBudget.Of(span).Components, c => c.Name.ToString() == "tolerance of a new chain");
    }

    [Fact]
    public void The_mean_of_several_readings_counts() =>
        Assert.Equal(
            Percent(Gauge.Measure(Span(25.4, 24, 612))),
            Percent(Gauge.Measure(Span(25.4, 24, 612) with { LengthsMm = [611.5, 612, 612.5] })), 1e-9);

    [Theory]
    [InlineData(0, 24, 612, null, "pitch_mm")]
    [InlineData(25.4, 0, 612, null, "pitches")]
    [InlineData(25.4, -3, 612, null, "pitches")]
    [InlineData(25.4, 24, 0, null, "length")]
    [InlineData(25.4, 24, double.NaN, null, "length")]
    [InlineData(25.4, 24, double.PositiveInfinity, null, "length")]
    [InlineData(25.4, 24, 612, 500.0, "temperature_c")]
    public void What_cannot_be_a_measurement_is_refused_by_field(double pitchMm, int pitches, double lengthMm, double? celsius,
        string field)
    {
        Assert.Equal(field,
            Assert.IsType<GaugeOutcome.Refused>(Gauge.Measure(pitchMm, pitches, lengthMm, Tool.Tape, celsius)).Field);
        var span = Span(pitchMm, pitches, lengthMm) with { ChainTemperatureC = celsius };
        Assert.Equal(field, Assert.IsType<GaugeOutcome.Refused>(Gauge.Measure(span)).Field);
    }

    [Fact]
    public void A_measurement_with_nothing_to_go_by_is_refused_by_field()
    {
        Assert.Equal("length", Refusal(Span(25.4, 24, 612) with { LengthsMm = [] }));
        Assert.Equal("tool_temperature_c", Refusal(Span(25.4, 24, 612) with { ToolTemperatureC = 200 }));
        Assert.Equal("new_length", Refusal(Span(25.4, 24, 612) with { New = new NewLength(24, new Instrument.Tape()) }));
        Assert.Equal("pitches", Refusal(Span(25.4, 1, 25.5) with { FirstLink = FirstLink.Outer }));
    }

    [Theory]
    [InlineData(597, true)]
    [InlineData(598, false)]
    [InlineData(670, false)]
    [InlineData(671, true)]
    public void A_length_that_no_chain_has_is_doubted_and_not_thrown_away(double lengthMm, bool doubted)
    {
        Assert.Equal(doubted, Gauge.Measure(25.4, 24, lengthMm, Tool.Tape) is GaugeOutcome.Doubted);
        Assert.Equal(doubted, Gauge.Measure(Span(25.4, 24, lengthMm)) is GaugeOutcome.Doubted);
    }

    private static MeasuredSpan Span(double pitchMm, int pitches, double lengthMm) =>
        new() { PitchMm = pitchMm, Pitches = pitches, LengthsMm = [lengthMm] };

    private static string Refusal(MeasuredSpan span) => Assert.IsType<GaugeOutcome.Refused>(Gauge.Measure(span)).Field;

    private static double Percent(GaugeOutcome outcome) => outcome switch
    {
        GaugeOutcome.Measured measured => measured.Elongation.Percent,
        GaugeOutcome.Doubted doubted => doubted.Elongation.Percent,
        _ => double.NaN,
    };
}
