using System.Globalization;

namespace WearWatch.SensorSim.Tests;

/// <summary>What was true, against what was measured and against itself.</summary>
public sealed class TruthTests(WrittenMill written) : IClassFixture<WrittenMill>
{
    [Fact]
    public void The_truth_has_a_row_for_each_reading_in_the_same_order()
    {
        Assert.Equal(written.Readings.Lines.Count, written.Truth.Lines.Count);
        Assert.All(
            written.Readings.Lines.Zip(written.Truth.Lines),
            pair => Assert.Equal(
                (pair.First["chain"], pair.First["taken_at"], pair.First["place"]),
                (pair.Second["chain"], pair.Second["taken_at"], pair.Second["place"])));
    }

    // Oracle: the definition of elongation and of thermal expansion, worked out from the file with no code of the simulator.
    // Scatter allowed: five standard deviations of tape (0.45 mm and its division) or caliper, 1 % of the elongation from
    // stretch to stretch, and 3 degrees more or less where no temperature is told.
    [Fact]
    public void A_reading_without_a_slip_gauges_to_the_truth_within_its_scatter()
    {
        foreach (var (error, allowed, slip, row) in Gauged().Where(g => g.Slip == "None"))
            Assert.True(Math.Abs(error) < allowed, $"{row} is off by {error:0.000} %, allowed {allowed:0.000} %, {slip}");
    }

    [Fact]
    public void Readings_without_a_slip_are_right_in_the_middle() =>
        Assert.InRange(Gauged().Where(g => g.Slip == "None").Average(g => g.Error), -0.01, 0.01);

    // The smallest slip exchanges two digits that differ by one: 9 mm, of at most 1.95 m 0.46 %, less the scatter of the reading.
    [Fact]
    public void A_slip_is_a_gross_error()
    {
        var slips = Gauged().Where(g => g.Slip != "None").ToList();
        Assert.All(slips, g => Assert.True(Math.Abs(g.Error) > 0.35, $"{g.Row}: {g.Slip} changed it by {g.Error:0.00} % only"));
    }

    // Four slips alike, 0.8 % in all, and three at the very end: of some 4,000 readings 35, with a standard error of 6.
    [Fact]
    public void About_one_reading_in_a_hundred_carries_a_slip_and_every_kind_occurs()
    {
        var kinds = written.Truth.Lines.Select(r => r["slip"]).Where(s => s != "None").ToList();

        Assert.InRange((double)kinds.Count / written.Truth.Lines.Count, 0.0035, 0.0145);
        Assert.Equal(["DecimalSlip", "OnePitchTooFew", "OnePitchTooMany", "SwappedDigits"], kinds.Distinct().Order());
    }

    [Fact]
    public void Hours_to_the_limit_run_down_as_the_chain_runs()
    {
        foreach (var chain in written.Truth.Lines.GroupBy(r => (r["chain"], r["chain_number"])))
        {
            var lives = chain.Where(r => r.Number("true_hours_to_limit") > 0)
                .Select(r => r.Number("running_h") + r.Number("true_hours_to_limit")).ToList();
            if (lives.Count > 0) Assert.InRange(lives.Max() - lives.Min(), 0, 0.15); // rounded to 0.1 h
        }
    }

    [Fact]
    public void True_elongation_never_falls_at_a_place_of_a_chain()
    {
        foreach (var place in written.Truth.Lines.GroupBy(r => (r["chain"], r["chain_number"], r["place"])))
        {
            var elongations = place.Select(r => r.Number("true_elongation_pct")).ToList();
            Assert.Equal(elongations.Order(), elongations);
        }
    }

    // Oracle: over an interval short against the wander of the rate the elongation grows by about the mean of the rates at its
    // ends. Where the rate jumps or soars between two readings it does not, which is allowed in one interval of twenty.
    [Fact]
    public void Elongation_grows_at_the_rate_told()
    {
        var relativeErrors = new List<double>();
        foreach (var place in written.Truth.Lines.GroupBy(r => (r["chain"], r["chain_number"], r["place"])))
        {
            foreach (var (a, b) in place.Zip(place.Skip(1)).Where(pair => pair.First.Number("running_h") > 300))
            {
                var hours = b.Number("running_h") - a.Number("running_h");
                if (hours < 100) continue;
                var slope = 1000 * (b.Number("true_elongation_pct") - a.Number("true_elongation_pct")) / hours;
                var told = (a.Number("true_rate_pct_per_1000h") + b.Number("true_rate_pct_per_1000h")) / 2;
                relativeErrors.Add(Math.Abs(slope / told - 1));
            }
        }

        Assert.True(relativeErrors.Count > 1_000);
        Assert.InRange(relativeErrors.Count(e => e > 0.1) / (double)relativeErrors.Count, 0, 0.05);
        Assert.InRange(relativeErrors.Order().ElementAt(relativeErrors.Count / 2), 0, 0.03);
    }

    [Fact]
    public void A_chain_is_past_its_limit_exactly_when_no_hours_are_left_to_it() => Assert.All(
        written.TruthNow.Lines,
        r => Assert.Equal(r.Number("true_elongation_pct") >= r.Number("limit_pct"), r.Number("true_hours_to_limit") == 0));

    private IEnumerable<(double Error, double Allowed, string Slip, string Row)> Gauged()
    {
        var pitches = written.Chains.Lines.ToDictionary(c => c["chain"], c => c.Number("pitch_mm"));
        foreach (var (reading, truth) in written.Readings.Lines.Zip(written.Truth.Lines))
        {
            var nominal = reading.Number("pitches") * pitches[reading["chain"]];
            var at20 = reading.LengthMm("length") / (1 + 11.5e-6 * ((reading.NumberOrNull("temperature_c") ?? 20) - 20));
            var elongation = truth.Number("true_elongation_pct");
            var scatter = 100 * (reading["tool"] == "tape" ? 0.45 : 0.11) / nominal;
            var division = 100 * (reading["unit"] == "in" ? 0.8 : 0.25) / nominal;
            var allowed = 5 * Math.Sqrt(scatter * scatter + 1e-4 * elongation * elongation + 0.0035 * 0.0035) + division;
            var row = string.Create(CultureInfo.InvariantCulture, $"{reading["chain"]} at {reading["taken_at"]}");
            yield return (100 * (at20 - nominal) / nominal - elongation, allowed, truth["slip"], row);
        }
    }
}
