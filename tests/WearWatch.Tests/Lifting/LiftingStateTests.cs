using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Wear;

namespace WearWatch.Tests.Lifting;

public sealed class LiftingStateTests
{
    private static readonly DateTimeOffset Now = new(2026, 11, 20, 10, 0, 0, TimeSpan.Zero);
    private static readonly DateOnly Today = new(2026, 11, 20);

    private static readonly Examination Examined =
        new(new DateOnly(2026, 6, 1), Now.AddMonths(-5), ExaminationResult.NothingFound, []);

    private static readonly Examination Rejected = Examined with { Result = ExaminationResult.OutOfUse, ToldAt = Now };

    /// <summary>A leaf chain in Germany with a certificate, examined in June, with nothing against it.</summary>
    private static readonly LiftingFacts Good = new()
    {
        Card = new ChainCard { Name = "LC-1", Family = ChainFamily.Named("leaf"), PitchMm = 19.05 },
        Entry = new LiftingEntry
        {
            WrittenAt = Now.AddYears(-1),
            Case = new IntervalCase(LawRegion.NotSet, LiftingUse.Truck),
            HasCertificate = true,
        },
        PlantsRegion = LawRegion.Germany,
        ReplacedAt = null,
        Found = [],
        Examinations = [Examined],
        Steps = [],
        Wear = Condition.WithinLimit,
        Zone = TimeZoneInfo.Utc,
    };

    private static readonly LiftingFinding Crack =
        new(InspectionPoint.CrackedOrTurnedParts, Now.AddDays(-3), Now.AddDays(-3), "Ina", "third plate from the clevis");

    [Fact]
    public void With_all_in_order_it_says_that_nothing_stands_and_releases_nothing()
    {
        var state = LiftingState.Of(Good, Now);
        Assert.Empty(state.On(Today));
        Assert.Equal(LiftingVerdict.NothingStands, state.VerdictOn(Today));
        Assert.Contains("not a release for use", LiftingVerdicts.Words(LiftingVerdict.NothingStands).ToString(),
            StringComparison.Ordinal);
        Assert.Equal(new DateOnly(2027, 6, 1), state.ExaminationDue);
    }

    [Fact]
    public void A_finding_that_stops_takes_it_out_of_use_however_little_it_is_worn()
    {
        var fault = Assert.Single(LiftingState.Of(Good with { Found = [Crack] }, Now).On(Today));
        Assert.Equal(LiftingFaultKind.StopFinding, fault.Kind);
        Assert.Contains("third plate from the clevis", fault.Words.ToString(), StringComparison.Ordinal);
        Assert.Equal(LiftingVerdict.OutOfUse, LiftingVerdicts.Of(fault.Kind));
    }

    [Fact]
    public void Only_a_release_that_names_the_finding_and_was_given_after_it_was_told_closes_it()
    {
        var release = Step(LiftingStepKind.Released, Now.AddDays(-1), InspectionPoint.CrackedOrTurnedParts);
        Assert.Equal(LiftingVerdict.NothingStands, Verdict(Good with { Found = [Crack], Steps = [release] }));
        Assert.Equal(LiftingVerdict.OutOfUse, Verdict(
            Good with { Found = [Crack], Steps = [release with { Closes = [InspectionPoint.Corrosion] }] }));
        // A phone without signal told it later: the releaser did not know of it.
        Assert.Equal(LiftingVerdict.OutOfUse, Verdict(Good with { Found = [Crack with { ToldAt = Now }], Steps = [release] }));
    }

    [Fact]
    public void A_later_examination_without_a_finding_releases_nothing()
    {
        var after = Examined with { On = Today, ToldAt = Now };
        Assert.Equal(LiftingVerdict.OutOfUse, Verdict(Good with { Found = [Crack], Examinations = [Examined, after] }));
        var rejected = Examined with { Result = ExaminationResult.OutOfUse };
        Assert.Equal(LiftingVerdict.OutOfUse, Verdict(Good with { Examinations = [rejected, after] }));
        Assert.Equal(LiftingVerdict.NothingStands, Verdict(
            Good with { Examinations = [rejected, after], Steps = [Step(LiftingStepKind.Released, Now)] }));
    }

    [Fact]
    public void A_quarantine_stands_until_a_release_and_a_disposal_for_ever()
    {
        var quarantine = Step(LiftingStepKind.Quarantined, Now.AddDays(-2));
        var release = Step(LiftingStepKind.Released, Now.AddDays(-1));
        Assert.Equal(LiftingVerdict.OutOfUse, Verdict(Good with { Steps = [quarantine] }));
        Assert.Equal(LiftingVerdict.NothingStands, Verdict(Good with { Steps = [quarantine, release] }));
        var disposed = Good with { Steps = [Step(LiftingStepKind.Disposed, Now.AddDays(-2)), release] };
        Assert.Equal(LiftingStanding.Disposed, LiftingState.Of(disposed, Now).Standing);
        Assert.Equal(LiftingVerdict.OutOfUse, Verdict(disposed));
    }

    [Fact]
    public void A_new_chain_begins_without_the_old_ones_findings_and_without_its_certificate_and_examination()
    {
        var replaced = Good with
        {
            ReplacedAt = Now.AddDays(-1),
            Found = [Crack, Crack with { Point = InspectionPoint.AnchorsAndSheaves }],
        };
        var kinds = LiftingState.Of(replaced, Now).On(Today).Select(f => f.Kind);
        // The anchor stays with the machine, and so does what was found on it.
        Assert.Equal([LiftingFaultKind.StopFinding, LiftingFaultKind.NeverExamined, LiftingFaultKind.NoCertificate], kinds);
    }

    [Fact]
    public void An_examination_is_told_ahead_and_is_overdue_the_day_after_its_last_day()
    {
        var state = LiftingState.Of(Good, Now);
        var due = state.ExaminationDue!.Value;
        Assert.Equal(LiftingVerdict.NothingStands, state.VerdictOn(due.AddDays(-31)));
        Assert.Equal(LiftingVerdict.Attend, state.VerdictOn(due.AddDays(-30)));
        Assert.Equal(LiftingVerdict.Attend, state.VerdictOn(due));
        Assert.Equal(LiftingVerdict.ExamineFirst, state.VerdictOn(due.AddDays(1)));
    }

    [Fact]
    public void A_report_may_call_for_the_next_one_sooner_and_never_later()
    {
        Assert.Equal(new DateOnly(2026, 9, 1), Due(new DateOnly(2026, 9, 1)));
        Assert.Equal(new DateOnly(2027, 6, 1), Due(new DateOnly(2028, 1, 1)));

        static DateOnly? Due(DateOnly told) =>
            LiftingState.Of(Good with { Examinations = [Examined with { NextOn = told }] }, Now).ExaminationDue;
    }

    [Fact]
    public void An_examination_that_left_points_out_moves_no_date()
    {
        var part = new Examination(new DateOnly(2026, 11, 10), Now, ExaminationResult.Incomplete, []);
        var state = LiftingState.Of(Good with { Examinations = [Examined, part] }, Now);
        Assert.Equal(new DateOnly(2027, 6, 1), state.ExaminationDue);
        Assert.Equal(LiftingFaultKind.ExaminedInPart, Assert.Single(state.On(Today)).Kind);
    }

    [Fact]
    public void A_remedy_that_nobody_closed_by_its_date_takes_it_out_of_use()
    {
        var open = Good with { Examinations = [Examined with { Result = ExaminationResult.RemedyByDate, RemedyBy = Today }] };
        Assert.Equal(LiftingVerdict.NothingStands, LiftingState.Of(open, Now).VerdictOn(Today));
        Assert.Equal(LiftingVerdict.OutOfUse, LiftingState.Of(open, Now).VerdictOn(Today.AddDays(1)));
        var closed = open with { Steps = [Step(LiftingStepKind.Released, Now)] };
        Assert.Equal(LiftingVerdict.NothingStands, LiftingState.Of(closed, Now).VerdictOn(Today.AddDays(1)));
    }

    [Theory]
    [InlineData(Condition.SwapNow, Condition.NotKnown)]
    [InlineData(Condition.WithinLimit, Condition.SwapNow)]
    public void Wear_at_its_limit_and_links_at_theirs_are_no_less_than_a_finding(Condition wear, Condition links) =>
        Assert.Equal(LiftingVerdict.OutOfUse, Verdict(Good with { Wear = wear, Links = links }));

    [Fact]
    public void Past_the_last_day_that_wear_leaves_it_is_out_of_use() => Assert.Equal(
        LiftingVerdict.OutOfUse, Verdict(Good with { Wear = Condition.PlanASwap, OutOfUseBy = Now.AddMinutes(-1) }));

    /// <summary>The worst governs: whatever is added to what stands against a chain, the state is never milder.</summary>
    [Fact]
    public void Nothing_bad_that_is_added_ever_makes_the_state_milder()
    {
        Func<LiftingFacts, LiftingFacts>[] bad =
        [
            f => f with { Found = [.. f.Found, Crack] },
            f => f with { Entry = f.Entry! with { HasCertificate = false } },
            f => f with { Wear = Condition.SwapNow },
            f => f with { Links = Condition.SwapNow },
            f => f with { OutOfUseBy = Now },
            f => f with { Steps = [.. f.Steps, Step(LiftingStepKind.Quarantined, Now)] },
            f => f with { Steps = [.. f.Steps, Step(LiftingStepKind.Disposed, Now)] },
            f => f with { Examinations = [.. f.Examinations, Rejected] },
            f => f with { Examinations = [.. f.Examinations.Where(e => e == Rejected)] },
            f => f with { PlantsRegion = LawRegion.France },
        ];
        for (var set = 0; set < 1 << bad.Length; set++)
        {
            var facts = Good;
            for (var i = 0; i < bad.Length; i++)
                if ((set >> i & 1) == 1) facts = bad[i](facts);
            for (var i = 0; i < bad.Length; i++)
                if ((set >> i & 1) == 0)
                    Assert.True(Verdict(bad[i](facts)) >= Verdict(facts), $"set {set}, then {i}");
        }
    }

    private static LiftingVerdict Verdict(LiftingFacts facts) => LiftingState.Of(facts, Now).VerdictOn(Today);

    private static LiftingStep Step(LiftingStepKind kind, DateTimeOffset at, params InspectionPoint[] closes) =>
        new(kind, at, at, "Ola", "looked at it", closes);
}
