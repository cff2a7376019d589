using System.Text;
using WearWatch.Dashboard.Engineer.Report;
using WearWatch.Dashboard.Kit.Charts;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Lifting.Examinations;
using WearWatch.Lives;
using WearWatch.Phrases;
using WearWatch.Planning.Costs;
using WearWatch.Plant.Books;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Settings;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Tests.Engineering;

public sealed class ReportTests
{
    private static readonly PlantTime Time = new(A.Now, TimeZoneInfo.Utc);

    private static readonly DateOnly Month = new(A.Now.Year, A.Now.Month, 1);

    [Fact]
    public void An_empty_plant_has_an_empty_report_that_says_so()
    {
        var parts = MonthWriting.Parts(Facts());
        Assert.Equal(["In short", "What to decide", "What comes due", "What changed", "What it cost", "Which forecasts held"],
            parts.Select(p => p.Heading));
        Assert.Equal("Nothing waits for a decision.", Assert.Single(parts[1].Sentences));
        Assert.Equal("No limit comes within eight weeks.", Assert.Single(parts[2].Sentences));
    }

    [Fact]
    public void What_is_past_its_limit_and_in_no_plan_is_to_be_decided()
    {
        var parts = MonthWriting.Parts(Facts() with
        {
            Due =
            [
                new ChainComingDue("K-1", "Press", ConditionWords.Of(Condition.SwapNow, false), A.Now, PlannedFor: null),
                new ChainComingDue(
                    "K-2", "Press", ConditionWords.Of(Condition.SwapNow, false), A.Now, PlannedFor: A.Now.AddDays(3)),
                new ChainComingDue(
                    "K-3", "Press", ConditionWords.Of(Condition.PlanASwap, false), A.Now.AddDays(9), PlannedFor: null),
            ],
            Unjudged = 2,
        });
        Assert.Equal(
            [
                "When to swap K-1: past the limit, and in no plan.",
                "Whether to plan 1 more chain whose limit may come within eight weeks.",
                "Whether 2 alarms of faster wear are real: somebody has to look.",
            ], parts[1].Sentences);
        Assert.Equal("not planned", parts[2].Table!.Rows[0][4]);
        Assert.Equal(Time.Day(A.Now.AddDays(3)), parts[2].Table!.Rows[1][4]);
    }

    [Fact]
    public void A_chain_that_holds_a_load_with_no_swap_before_its_hard_date_is_told_as_out_of_use_from_there()
    {
        ChainComingDue Hoist(string name, DateTimeOffset? plannedFor) => new(
            name, "Press", ConditionWords.Of(Condition.PlanASwap, true), A.Now.AddDays(40), plannedFor, A.Now.AddDays(20));
        var parts = MonthWriting.Parts(Facts() with
        {
            Due = [Hoist("H-1", null), Hoist("H-2", A.Now.AddDays(30)), Hoist("H-3", A.Now.AddDays(10))],
        });
        var day = Time.Day(A.Now.AddDays(20));
        Assert.Equal($"Out of use unless a swap before is planned: H-1 from {day}, H-2 from {day}.", parts[1].Sentences[0]);
        Assert.Equal(
            [$"out of use from {day}", $"out of use from {day}", Time.Day(A.Now.AddDays(10))],
            parts[2].Table!.Rows.Select(r => r[4]));
    }

    [Fact]
    public void Swaps_and_costs_of_the_month_are_told_against_a_month_of_the_year_before()
    {
        BookedLife Ended(DateTimeOffset at) => new(0, new Life(1000, LifeEnd.ReplacedBefore), FittingKnown: true)
        {
            FittedAt = at.AddDays(-100),
            EndedAt = at,
            Removed = true,
            HoursRun = 1000,
            LastPercent = 1.5,
        };
        var start = Time.StartOf(Month);
        var chain = new BookedChain(1, Desk.Card(), 3, [Ended(start.AddMonths(-3)), Ended(start.AddDays(0.1))]);
        var parts = MonthWriting.Parts(Facts() with { Fleet = Desk.Fleet([chain]) });
        Assert.Contains("1 chain was swapped in the month, 0 of them after a breakdown.", parts[0].Sentences);
        // 100 pitches at 3 and a stop of one hour at 400, against a twelfth of the same.
        Assert.Equal(["Total", "700", "58"], parts[4].Table!.Rows[^1]);

        // Seen at once: two months with a bar, both without breakdowns.
        var bars = parts[4].Picture!.Marks.OfType<DrawnMark.Bar>()
            .Where(b => b.Said.Contains("700", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, bars.Count);
        Assert.All(bars, bar => Assert.Equal(Ink.Main, bar.Ink));
        Assert.Equal(
            13, parts[4].Picture!.Marks.OfType<DrawnMark.Label>().Count(l => l.Text.Contains(' ') && l.Text.Length == 6));
    }

    [Fact]
    public void A_forecast_that_came_true_lies_on_the_line_and_one_outside_its_interval_is_a_square()
    {
        var parts = MonthWriting.Parts(Facts() with { Record = [Scored("K-1", 3000, 1000), Scored("K-2", 1400, 1000)] });
        var picture = parts[^1].Picture!;
        var line = Assert.Single(picture.Marks.OfType<DrawnMark.Stroke>(), s => s.Ink == Ink.Stated);
        var dots = picture.Marks.OfType<DrawnMark.Point>().ToList();
        Assert.Equal([Ink.Main, Ink.Apart], dots.Select(d => d.Ink));
        double Off(DrawnMark.Point dot) =>
            dot.Y - (line.Y1 + (dot.X - line.X1) / (line.X2 - line.X1) * (line.Y2 - line.Y1)); // above zero: sooner
        Assert.Equal(0, Off(dots[0]), 6);
        Assert.True(Off(dots[1]) > 10, "it ended sooner than forecast");
        Assert.Equal("1 of 2 within their 90 % interval", picture.Said);
    }

    [Fact]
    public void The_sheet_is_a_pdf_of_at_most_two_pages_with_its_font_and_its_pictures_inside()
    {
        var facts = Facts() with
        {
            Record = [Scored("K-1", 3000, 1000), Scored("K-2", 1400, 1000)],
            Due = [.. Enumerable.Range(1, 40)
                .Select(i => new ChainComingDue($"K-{i}", "Press", ConditionWords.Of(Condition.PlanASwap, false), A.Now, null))],
        };
        var file = ReportPdf.Write(new MonthReport(Month, "Quillfen", Time, MonthWriting.Parts(facts)));
        Assert.Equal("%PDF"u8.ToArray(), file[..4]);
        var text = Encoding.Latin1.GetString(file);
        Assert.InRange(text.Split("/Type/Page/").Length + text.Split("/Type /Page\n").Length - 2, 0, 2);
        Assert.Contains("DejaVu", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_chain_that_lifts_is_named_with_what_stands_against_it_and_nothing_releases_it()
    {
        var lifting = new LiftingStatesView(new Dictionary<string, LiftingNow>
        {
            ["H-1"] = new(LiftingVerdict.OutOfUse, $"Out of use", [$"A crack was found."], Phrase.None),
            ["H-2"] = new(LiftingVerdict.ExamineFirst, $"examination overdue", [], Phrase.None),
            ["H-3"] = new(LiftingVerdict.NothingStands, $"lifts", [], Phrase.None),
        });
        var part = MonthWriting.Parts(Facts() with { Lifting = lifting })[2];
        Assert.Equal(
            ["H-1 Out of use", "H-2 Competent person to examine before further use"],
            part.Table!.Rows.Select(row => $"{row[0]} {row[1]}"));
        Assert.Equal("Nothing stands against it here; not a release for use: 1 chain.", part.Sentences[^1]);
        Assert.Contains("competent person examines it", part.Sentences[0], StringComparison.Ordinal);
    }

    /// <summary>A forecast of 2,000 h left, given at half of a life, of a life that ended in the month.</summary>
    private static RecordedForecast Scored(string name, double life, double standing) => new(
        new ScoredForecast
        {
            Forecast = new WearForecast
            {
                LimitPercent = 3,
                ProbabilityPassed = 0,
                PercentilesHours = [.. Enumerable.Range(1, 99).Select(p => 1500.0 + 10 * p)],
            },
            LastReadingHours = standing,
            StandingHours = standing,
            LifeHours = life,
        },
        SpreadCheck.AtShare, "broad prior", Desk.Card(name))
    {
        EndedAt = Time.StartOf(Month).AddHours(1),
    };

    private static MonthFacts Facts() => new()
    {
        Month = Month,
        Plant = "Quillfen",
        Time = Time,
        Conditions = new Dictionary<ShownCondition, int>(),
        Lifting = LiftingStatesView.None,
        Due = [],
        Raised = [],
        PlantNotices = [],
        Unjudged = 0,
        Waiting = 0,
        Fleet = Desk.Fleet([]),
        Record = [],
        Terms = new CostTerms(new PlanningCosts(), new Dictionary<string, double>(), 3, 200),
    };
}
