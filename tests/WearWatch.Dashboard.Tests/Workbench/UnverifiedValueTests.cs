using WearWatch.Chains;
using WearWatch.Dashboard.Engineer.Workbench.Gauging;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Bench;

namespace WearWatch.Dashboard.Tests.Workbench;

/// <summary>
/// Values that nobody read at a source are all on one page, and none decides without being marked on the screen.
/// </summary>
public sealed class UnverifiedValueTests
{
    public static TheoryData<string> Types =>
        [.. ChainCatalogue.All.Where(t => t.PitchMm is not null).Select(t => t.Designation)];

    [Fact]
    public void The_list_has_every_recalled_value_of_the_catalogue()
    {
        var listed = UnverifiedValue.All.Select(v => (Of: v.Of.ToString(), What: v.What.ToString(), v.Figure)).ToHashSet();
        foreach (var type in ChainCatalogue.All)
        {
            Assert.All(TypeValue.Of(type).Where(v => v.Value is { IsVerified: false }), value =>
                Assert.Contains((type.Designation, value.Name.ToString(), value.Value!.Value.Value), listed));
        }

        Assert.DoesNotContain(UnverifiedValue.All, v => v.Source.StartsWith("docs/references.md", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void What_governs_and_was_not_read_is_marked_on_the_screen(string designation)
    {
        var type = ChainCatalogue.Find(designation)!;
        var length = 20 * type.PitchMm!.Value.Value;
        var gauged = Bench.Gauge(FormattableString.Invariant($"type={designation}&pitches=20&length={length}"));
        var said = string.Join(' ', GaugeView.Of(gauged, UnitPreference.Si).Remarks);
        var recalled = new (string Name, bool Governs)[]
        {
            ("pitch", !type.PitchMm.Value.IsVerified),
            ("tolerance of a new chain", !(type.NewLengthTolerancePercent ?? type.Family.NewLengthTolerancePercent).IsVerified),
            ("limit", !gauged.Limit.IsVerified),
        };
        Assert.All(recalled.Where(r => r.Governs), r => Assert.Contains(r.Name, said, StringComparison.Ordinal));
        Assert.Equal(recalled.Any(r => r.Governs), said.Contains("From memory, not verified", StringComparison.Ordinal));

        if (type.PinMm is null || gauged.HoldsLoad) return;
        var drive = DriveBench.Answer(Bench.Ask(
            $"type={designation}&teeth=19&driven_teeth=38&rpm=10&power=0.001 kW&pitches=200"));
        var worked = Assert.IsType<BenchAnswer<DriveCalculation>.Answered>(drive).Result;
        var unread = new[] { type.PitchMm, type.PinMm, type.JointAreaMm2, type.TensileKilonewtons }
            .Count(v => v is { IsVerified: false });
        Assert.Equal(unread, worked.FromMemory.Count);
    }
}
