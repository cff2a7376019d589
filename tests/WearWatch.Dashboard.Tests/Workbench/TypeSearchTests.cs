using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Dashboard.Engineer.Workbench;
using WearWatch.Dashboard.Engineer.Workbench.ChainTypes;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Bench;

namespace WearWatch.Dashboard.Tests.Workbench;

public sealed class TypeSearchTests
{
    [Fact]
    public void Types_are_found_by_name_pitch_and_kind()
    {
        Assert.Equal("16B-1", Search("find=16b").Found[0].Designation);
        Assert.All(Search("pitch_mm=25.4").Found, t => Assert.True(t.PitchMm is null
            ? t.PitchChoicesMm.Any(p => Math.Abs(p - 25.4) < 0.31)
            : Math.Abs(t.PitchMm.Value.Value - 25.4) < 0.31));
        Assert.All(Search("family=leaf").Found, t => Assert.Equal(ChainFamily.Named("leaf"), t.Family));
        Assert.Contains(Search("pitch_mm=160").Found, t => t.Designation == "M112");
        Assert.Empty(Search("find=nothing like it").Found);
    }

    [Fact]
    public void At_most_four_are_compared_and_unknown_names_are_left_out() =>
        Assert.Equal(
            ["16B-1", "80-1", "40-1", "50-1"], Search("compare=16B-1,nonsense,80,40,50,60").Compared.Select(t => t.Designation));

    [Fact]
    public void A_type_is_put_beside_others_and_taken_away()
    {
        var address = BenchAddress.Of(new Uri("http://localhost/types?compare=16B-1"));
        var both = Search("compare=16B-1").Toggle(address, "80-1");
        Assert.Equal("16B-1,80-1", both.Text("compare"));
        Assert.Equal("80-1", Search("compare=16B-1,80-1").Toggle(both, "16B-1").Text("compare"));
    }

    // Source: docs/references.md [26] for the 16B pin, read; the bush length behind the bearing area was recalled.
    [Fact]
    public void Every_value_shows_whether_it_was_verified()
    {
        var comparison = TypeComparison.Of(Search("compare=16B-1,80-1").Compared, UnitPreference.Si);
        var pin = comparison.Rows.Single(r => r.Name.ToString() == "Pin diameter").Cells[0]!;
        Assert.Equal(("8.28 mm", true), (pin.Text, pin.Value.IsVerified));
        Assert.False(comparison.Rows.Single(r => r.Name.ToString() == "Bearing area").Cells[0]!.Value.IsVerified);
        // 80 is 16A, whose bush length was recalled, too.
        Assert.False(comparison.Rows.Single(r => r.Name.ToString() == "Bearing area").Cells[1]!.Value.IsVerified);
    }

    [Fact]
    public void Every_value_of_every_type_has_a_source() => Assert.All(
        ChainCatalogue.All.SelectMany(TypeValue.Of).Where(v => v.Value is not null),
        v => Assert.NotEqual("", v.Value!.Value.Source));

    private static TypeSearch Search(string query) => TypeSearch.Of(Bench.Ask(query));
}
