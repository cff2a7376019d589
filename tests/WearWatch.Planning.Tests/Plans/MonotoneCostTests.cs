using CsCheck;
using WearWatch.Planning.Plans;

namespace WearWatch.Planning.Tests.Plans;

/// <summary>What must hold whatever the numbers: more of what hurts never costs less.</summary>
public sealed class MonotoneCostTests
{
    private static readonly Dictionary<string, string?> Spread =
        new() { ["C1"] = "L2/14", ["C2"] = "L1/28", ["C3"] = "L2/14", ["C4"] = "L1/28", ["C5"] = "L2/42" };

    private static double CostOf(PlanInput input) => new SwapCosting(input).Count(Spread).Cost.Total;

    [Fact]
    public void Dearer_stops_breakdowns_overtime_or_haste_never_make_a_plan_cheaper() =>
        Gen.Select(Gen.Int[1, 1000], Gen.Double[1, 5]).Sample((seed, factor) =>
        {
            var input = A.SmallPlant(seed);
            var (costs, before) = (input.Costs, CostOf(input));
            foreach (var dearer in new[]
            {
                costs with { StoppedLinePerHour = factor * costs.StoppedLinePerHour },
                costs with { BreakdownHours = factor * costs.BreakdownHours },
                costs with { OvertimePerHour = factor * costs.OvertimePerHour },
                costs with { ExpressShare = factor * costs.ExpressShare },
                costs with { MeanHoursToFailurePastLimit = costs.MeanHoursToFailurePastLimit / factor },
            })
            {
                Assert.True(CostOf(input with { Costs = dearer }) >= before - 1e-9);
            }
        }, iter: 100);

    [Fact]
    public void Fewer_crew_hours_or_spares_never_make_a_plan_cheaper() =>
        Gen.Select(Gen.Int[1, 1000], Gen.Double[0, 1]).Sample((seed, share) =>
        {
            var input = A.SmallPlant(seed);
            Assert.True(CostOf(input with
            {
                Windows = [.. input.Windows.Select(w => w with { CrewHours = share * w.CrewHours })],
            }) >= CostOf(input) - 1e-9);
            Assert.True(CostOf(input with
            {
                Spares = [.. input.Spares.Select(s => s with { InStock = (int)(share * s.InStock) })],
            }) >= CostOf(input) - 1e-9);
        }, iter: 100);
}
