using WearWatch.Chains;
using WearWatch.Dashboard.Administration.Register;
using WearWatch.Plant.Register;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Register;

public sealed class CardFormTests
{
    [Fact]
    public void A_known_type_fills_in_family_pitch_and_strands()
    {
        var form = CardForm.New(A.Time());
        form["chain_type"] = "16B-2";
        Assert.Equal(("roller", "25.4", "2"), (form["family"], form["pitch_mm"], form["strands"]));
        form["chain_type"] = "BL844";
        Assert.Equal("leaf", form["family"]);
        Assert.Contains("leaf chain", form.TypeWords.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_type_that_is_not_in_the_catalogue_leaves_what_was_typed()
    {
        var form = CardForm.New(A.Time());
        (form["pitch_mm"], form["chain_type"]) = ("31.5", "our own");
        Assert.Equal("31.5", form["pitch_mm"]);
        Assert.Contains("Not in the catalogue", form.TypeWords.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_limit_that_governs_is_shown_while_typing()
    {
        var form = CardForm.New(A.Time());
        Assert.Null(form.Limit);
        form["chain_type"] = "16B-1";
        Assert.Equal(3, form.Limit!.Governing.Percent);
        // 200/N percent for the largest sprocket: docs/references.md [8].
        form["sprocket_teeth"] = "17, 100";
        Assert.Equal((2.0, LimitReason.SprocketTeeth), (form.Limit.Governing.Percent, form.Limit.Governing.Reason));
        form["fixed_centres"] = "yes";
        Assert.Equal(LimitReason.FixedCentres, form.Limit.Governing.Reason);
        form["limit_pct"] = "2.5";
        Assert.Equal((2.5, 1.5), (form.Limit.Governing.Percent, form.Limit.AlsoHold[0].Percent));
    }

    [Fact]
    public void A_slip_is_told_at_its_field_as_soon_as_it_is_typed_what_is_missing_only_when_it_is_asked_for()
    {
        var form = CardForm.New(A.Time());
        form["pitches"] = "12.5";
        Assert.Contains("whole number", form.Fault("pitches"), StringComparison.Ordinal);
        Assert.Null(form.Fault("pitch_mm"));
        Assert.Null(form.ToSave());
        Assert.Contains("Write the pitch", form.Fault("pitch_mm"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_register_refused_stands_at_its_field_until_that_is_typed_again()
    {
        var form = CardForm.Of(A.Chain(), A.Time());
        form.Refuse([new Refusal("limit_set_reason", $"Say why.")]);
        Assert.NotNull(form.ToSave());
        Assert.Equal("Say why.", form.Fault("limit_set_reason"));
        form["limit_set_reason"] = "jam";
        Assert.Null(form.Fault("limit_set_reason"));
    }

    [Fact]
    public void A_card_that_is_shown_and_saved_is_the_same_to_the_second_in_any_time_zone()
    {
        var row = A.Chain();
        row.FittedAt = new DateTimeOffset(2026, 10, 25, 1, 30, 17, TimeSpan.Zero);
        var form = CardForm.Of(row, A.Time("Europe/Vienna"));
        Assert.Equal("2026-10-25T02:30", form["fitted_at"]);
        Assert.Empty(CardChanges.Between(row.ToCard(), form.ToSave()!));
        Assert.False(form.IsChanged);
        form["fitted_at"] = "2026-07-01T06:00";
        Assert.Equal(new DateTimeOffset(2026, 7, 1, 4, 0, 0, TimeSpan.Zero), form.ToSave()!.FittedAt);
    }

    [Fact]
    public void After_another_persons_change_theirs_comes_in_and_what_was_typed_here_stays()
    {
        var form = CardForm.Of(A.Chain(), A.Time());
        form["pitches"] = "118";
        var now = A.Chain(line: "Saw");
        now.Revision = 7;
        form.GoOnFrom(now);
        Assert.Equal(("Saw", "118", 7), (form["line"], form["pitches"], form.Revision));
        Assert.True(form.IsChanged);
    }

    [Theory]
    [InlineData("speed_m_s", "", "1.5", "Chain speed: – to 1.5 m/s")]
    [InlineData("fixed_centres", "", "yes", "fixed centres: no to yes")]
    [InlineData("family", "", "leaf", "Family: roller to leaf")]
    [InlineData("lubrication", "manual", "auto", "Lubrication: by hand to automatic")]
    [InlineData("chain", "", "K-1", "taken into the register")]
    public void A_change_is_told_in_words(string field, string from, string to, string words) =>
        Assert.Equal(words, CardChangeLine.Words(Change(field, from, to)).ToString());

    private static CardChangeRow Change(string field, string from, string to) =>
        new() { By = "Vera", Field = field, From = from, To = to };
}
