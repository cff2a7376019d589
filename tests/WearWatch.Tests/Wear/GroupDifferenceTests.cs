using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>
/// Oracle: simulated pairs of 16B-1 chains of 480 pitches, measured by tape over 40 pitches every 700 h, with the scatter that
/// the uncertainty budget gives. Issue: 95 of 100 pairs of which one wears 1.5 times as fast are told of before the limit, and
/// at most 2 of 100 that wear alike.
/// </summary>
public sealed class GroupDifferenceTests
{
    private const int Pitches = 40, WholePitches = 480, Pairs = 100, Visits = 18;
    private const double HoursBetween = 700, LimitMm = 60;

    [Fact]
    public void A_strand_that_wears_faster_is_told_of_before_the_limit_of_the_difference()
    {
        var chance = new Random(18);
        var inTime = Enumerable.Range(0, Pairs).Count(_ => ToldInTime(chance, 1.5));

        Assert.InRange(inTime, 95, Pairs);
    }

    [Fact]
    public void Strands_that_wear_alike_are_seldom_told_of()
    {
        var chance = new Random(180);
        var told = Enumerable.Range(0, 3 * Pairs).Count(_ => Notices(chance, 1).Any(n => n.Told));

        Assert.InRange(told, 0, 6);
    }

    // By hand, as the review met them: 0.90 and 1.35 % over 42 m are 189 mm apart.
    [Fact]
    public void The_difference_of_length_is_taken_over_the_whole_chain()
    {
        var difference = GroupDifference.Of([new("AF-1", 0.90, 0.05, 0.1, 42_000), new("AF-2", 1.35, 0.05, 0.15, 42_000)], 150)!;

        Assert.Equal(189, difference.LengthMm!.Value, 1e-9);
        Assert.Equal(2 * 420 * double.Hypot(0.05, 0.05), difference.ExpandedUncertaintyMm!.Value, 1e-9);
        var notice = difference.ToNotice()!;
        Assert.True(notice.Urgent);
        Assert.Contains("189 mm apart", notice.Why.ToString(), StringComparison.Ordinal);
        Assert.Contains("together, never one alone", notice.WhatToDo.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_difference_within_its_uncertainty_is_no_news() =>
        Assert.Null(GroupDifference.Of([new("A", 0.9, 0.1, 0.1, 42_000), new("B", 1.1, 0.1, 0.1, 42_000)], 50)!.ToNotice());

    private static bool ToldInTime(Random chance, double ratio)
    {
        var visits = Notices(chance, ratio).ToList();
        var first = visits.FindIndex(v => v.Told);
        var passed = visits.FindIndex(v => v.TrueMm >= LimitMm);
        return first >= 0 && (passed < 0 || first < passed);
    }

    private static IEnumerable<(bool Told, double TrueMm)> Notices(Random chance, double ratio)
    {
        var rate = 0.08 * Math.Exp(0.3 * Normal(chance));
        double[] rates = [rate, ratio * rate];
        double[] offset = [0.04 * Normal(chance), 0.04 * Normal(chance)];
        var readings = new List<Reading>[] { [], [] };
        for (var visit = 1; visit <= Visits; visit++)
        {
            var hours = HoursBetween * visit;
            var members = new List<GroupMember>();
            for (var strand = 0; strand < 2; strand++)
            {
                var percent = 0.06 + rates[strand] * hours / 1000 + offset[strand];
                readings[strand].Add(new Reading
                {
                    Chain = "K1",
                    Counter = new RunningHours(hours),
                    Tool = Tool.Tape,
                    Pitches = Pitches,
                    LengthMm = Pitches * A.PitchMm * (1 + percent / 100) + 0.5 * Normal(chance),
                });
                var chain = Assessment.Of(
                    A.Card(), readings[strand], [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, A.Monday);
                members.Add(new(
                    $"{strand}", chain.ElongationPercent!.Value, chain.ElongationStandardDeviationPercent!.Value,
                    chain.RatePercentPer1000Hours, WholePitches * A.PitchMm));
            }

            var trueMm = WholePitches * A.PitchMm * (rates[1] - rates[0]) * hours / 1000 / 100;
            yield return (GroupDifference.Of(members, LimitMm)!.ToNotice() is not null, trueMm);
        }
    }

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
