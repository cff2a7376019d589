using WearWatch.Chains;
using WearWatch.Dashboard.Technician.Entry;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Units;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Entry;

public sealed class EntryVerdictTests
{
    [Fact]
    public void Nothing_typed_is_incomplete_and_without_fault()
    {
        var verdict = EntryVerdict.Of(new EntryForm(), Chain());
        Assert.Equal(EntryJudgement.Incomplete, verdict.Judgement);
        Assert.Empty(verdict.Faults);
        Assert.False(verdict.CanBeSaved);
    }

    [Fact]
    public void The_elongation_is_told_while_typing()
    {
        // 48 pitches of 25.4 mm are 1219.2 mm; 1234.0 mm is 100 * 14.8 / 1219.2 = 1.2139 % longer.
        var verdict = EntryVerdict.Of(Form("1234.0"), Chain());
        Assert.Equal(1.2139, verdict.Elongation!.Value.Percent, 4);
        Assert.Equal(EntryJudgement.Fits, verdict.Judgement);
        Assert.True(verdict.CanBeSaved);
    }

    [Fact]
    public void Inches_with_a_fraction_give_the_same_elongation()
    {
        // 48 9/16 in = 1233.4875 mm.
        var form = Form("48 9/16");
        form.Unit = LengthUnit.Inch;
        Assert.Equal(100 * (1233.4875 / 1219.2 - 1), EntryVerdict.Of(form, Chain()).Elongation!.Value.Percent, 9);
    }

    [Theory]
    [InlineData("1234.0", EntryJudgement.Fits)]
    [InlineData("1236.0", EntryJudgement.Unusual)]
    [InlineData("1231.8", EntryJudgement.Unusual)]
    [InlineData("1244.0", EntryJudgement.Doubtful)]
    [InlineData("1204.0", EntryJudgement.Doubtful)]
    [InlineData("1520", EntryJudgement.Doubtful)]
    public void The_verdict_holds_the_reading_against_what_is_expected(string length, EntryJudgement judgement) =>
        Assert.Equal(judgement, EntryVerdict.Of(Form(length), Chain()).Judgement);

    [Fact]
    public void A_counter_further_on_expects_more_wear()
    {
        // 0.2 % per 1,000 h from 1.2 % at 6,000 h: 1.4 % at 7,000 h, that is 1236.3 mm.
        var later = Form("1236.3");
        later.Counter = "7000";
        Assert.Equal(EntryJudgement.Fits, EntryVerdict.Of(later, Chain()).Judgement);
    }

    [Fact]
    public void The_expectation_grows_and_widens_with_the_hours()
    {
        var near = EntryExpectation.Of(A.Assessment(), 0);
        var far = EntryExpectation.Of(A.Assessment(), 2000);
        Assert.Equal(1.2, near.Percent, 9);
        Assert.Equal(1.6, far.Percent, 9);
        // sqrt(0.05^2 + (0.4 * 0.3)^2) = 0.13.
        Assert.Equal((0.05, 0.13), (near.DeviationPercent, Math.Round(far.DeviationPercent, 9)));
    }

    [Fact]
    public void Without_readings_the_prior_is_what_is_expected() =>
        Assert.Equal(WearPrior.Broad.MeanStartPercent, EntryExpectation.Of(A.Assessment(elongationPct: null), 0).Percent);

    [Theory]
    [InlineData("length", "12 33", "", "", "48")]
    [InlineData("pitches", "1234", "", "", "4.5")]
    [InlineData("counter_h", "1234", "abc", "", "48")]
    [InlineData("counter_h", "1234", "5000", "", "48")]
    [InlineData("temperature_c", "1234", "", "warm", "48")]
    public void A_slip_is_told_at_its_field(string field, string length, string counter, string temperature, string pitches)
    {
        var form = Form(length);
        (form.Counter, form.Temperature, form.Pitches) = (counter, temperature, pitches);
        var verdict = EntryVerdict.Of(form, Chain());
        Assert.True(verdict.Faults.ContainsKey(field));
        Assert.False(verdict.CanBeSaved);
    }

    [Theory]
    [InlineData(50, 1234.0, "50", "1234")] // a miscount leaves the length as it was typed
    [InlineData(48, 1233.5, "48", "1233.5")]
    public void A_slip_that_was_said_yes_to_corrects_the_form(
        int pitches, double lengthMm, string pitchesTyped, string lengthTyped)
    {
        var form = Form("1234");
        form.Take(new Slip(SlipKind.PitchesMiscounted, 0.9, 1, $"over so many pitches")
        {
            Pitches = pitches,
            LengthMm = lengthMm,
            Chain = "K-1",
        }, A.Time());
        Assert.Equal((pitchesTyped, lengthTyped), (form.Pitches, form.Length));
    }

    [Fact]
    public void A_form_starts_from_what_is_best_measured_and_keeps_its_key_until_it_is_saved()
    {
        var form = new EntryForm();
        var proposal = SpanProposal.For(
            SpanCase.Of(new() { Name = "K-1", PitchMm = 25.4 }, new ReplacementLimit(3, LimitReason.General, "the test")));
        form.StartFrom(proposal, A.Reading(1));
        Assert.Equal(("40", Tool.Tape), (form.Pitches, form.Tool));
        var key = form.Key;
        form.Step(2);
        Assert.Equal(("42", key), (form.Pitches, form.Key));
        form.Next();
        Assert.NotEqual(key, form.Key);
    }

    [Fact]
    public void What_is_sent_carries_the_plants_time()
    {
        var form = Form("1234");
        form.TakenAt = "2026-11-20T06:30";
        var reading = form.ToReading("K-1", A.Time("Europe/Vienna"), confirmed: true);
        Assert.Equal(new DateTimeOffset(2026, 11, 20, 5, 30, 0, TimeSpan.Zero), reading.TakenAt!.Value.ToUniversalTime());
        Assert.Equal(("K-1", 48, "1234", true, "dashboard"),
            (reading.Chain, reading.Pitches, reading.Length, reading.Confirmed, reading.ToldBy));
    }

    [Theory]
    [InlineData(null, null, "The limit is not in sight.")]
    [InlineData(40.0, 40.0, "The early date stays at 4 Jan 2027.")]
    [InlineData(40.0, 30.0, "The early date moved 10 days earlier, from 4 Jan 2027 to 25 Dec 2026.")]
    [InlineData(30.0, 31.0, "The early date moved 1 day later, from 25 Dec 2026 to 26 Dec 2026.")]
    [InlineData(null, 30.0, "The early date is 25 Dec 2026: 19 of 20 such chains last longer.")]
    [InlineData(30.0, null, "The early date was 25 Dec 2026; now the limit is not in sight.")]
    public void The_move_of_the_forecast_is_told(double? before, double? after, string words) =>
        Assert.Equal(words, ForecastMove.Words(before is { } b ? A.In(b) : null, after is { } a ? A.In(a) : null, A.Time()));

    private static EntryForm Form(string length) => new() { Pitches = "48", Length = length };

    private static EntryChain Chain() => new()
    {
        Row = A.Chain(),
        Assessment = A.Assessment(),
        Last = A.Reading(1, takenAt: A.In(-60)),
        LastCounterH = 6000,
        Corrects = null,
        EarlyDate = A.In(40),
        Time = A.Time(),
    };
}
