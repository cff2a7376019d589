using WearWatch.Chains;
using WearWatch.Plant.Intake;
using WearWatch.Storage;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>Facts of an event: told in fields of their own, and refused where they cannot be.</summary>
public sealed class EventFactsTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(null, "Say how many pitches were taken out.")]
    [InlineData(0, "A whole number of pitches, 1 to 10,000.")]
    [InlineData(-2, "A whole number of pitches, 1 to 10,000.")]
    public async Task A_shortening_tells_how_many_pitches_were_taken_out(int? pitches, string reason)
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var told = Shortened(100).Telling(e => e with { PitchesOut = pitches });
        Assert.Equal([("pitches_out", reason)], await FaultsAsync(plant, told));
    }

    [Fact]
    public async Task A_chain_that_lifts_or_has_no_joint_to_take_out_is_never_shortened_from_the_desk_or_in_a_file()
    {
        foreach (var more in new[] { "family=round_link", "family=leaf", "lifts=yes" })
        {
            await using var plant = await TestPlant.OpenAsync();
            await plant.AddChainAsync(more: more);
            var told = Shortened(100).Telling(e => e with { PitchesOut = 2 });
            var (field, reason) = Assert.Single(await FaultsAsync(plant, told));
            Assert.Equal("event", field);
            Assert.Contains("never shortened", reason, StringComparison.Ordinal);
            var text = "chain,event,counter_h_before,pitches_out\nC1,shortened,100,2\nC1,shortened,120,\n";
            var report = await plant.Import.ImportAsync([A.File("events.csv", text)], null, Ct);
            Assert.Equal(
                [(RemarkKind.Refused, "event"), (RemarkKind.Refused, "event")],
                report.Files[0].Remarks.Select(r => (r.Kind, r.Column)));
        }
    }

    [Fact]
    public async Task A_chain_is_not_shortened_by_more_than_is_left_of_it_and_a_new_one_is_whole_again()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync(more: "pitches=10");
        Assert.Empty(await FaultsAsync(plant, Shortened(100).Telling(e => e with { PitchesOut = 6 })));
        Assert.Equal(
            [("pitches_out", "The chain has only 4 pitches.")],
            await FaultsAsync(plant, Shortened(200).Telling(e => e with { PitchesOut = 4 })));
        Assert.Empty(await FaultsAsync(plant, A.Event(kind: ChainEventKind.Replacement, beforeH: 300)));
        Assert.Empty(await FaultsAsync(plant, Shortened(400).Telling(e => e with { PitchesOut = 4 })));
        await using var db = plant.Db();
        Assert.Equal(4, Shortening.PitchesOut((await RawChain.LoadAsync(db, [1], Ct))[0].Events));
    }

    [Theory]
    [InlineData(ChainEventKind.Tensioned, "lot")]
    [InlineData(ChainEventKind.Oiling, "broke")]
    [InlineData(ChainEventKind.Replacement, "pitches_out")]
    [InlineData(ChainEventKind.Shortened, "oil_method")]
    [InlineData(ChainEventKind.Tensioned, "new_pitches")]
    [InlineData(ChainEventKind.Replacement, "new_teeth")]
    public async Task A_fact_of_another_kind_of_event_is_refused_from_the_desk_and_in_a_file(ChainEventKind kind, string field)
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var told = A.Event(kind: kind, beforeH: 100).Telling(e => e with
        {
            Lot = field == "lot" ? "B-2" : "",
            Broke = field == "broke",
            PitchesOut = field == "pitches_out" || kind == ChainEventKind.Shortened ? 2 : null,
            NewPitches = field == "new_pitches" ? 98 : null,
            NewTeeth = field == "new_teeth" ? 21 : null,
            Oil = field == "oil_method" ? new OilApplied(OilMethod.Hand) : OilApplied.Untold,
        });
        Assert.Equal(field, Assert.Single(await FaultsAsync(plant, told)).Field);
        var word = kind.ToString().ToLowerInvariant();
        var value = field switch
        {
            "lot" => "B-2",
            "broke" => "yes",
            "pitches_out" => "2",
            "new_pitches" or "new_teeth" => "98",
            _ => "hand",
        };
        var text = $"chain,event,counter_h_before,{field}\nC1,{word},100,{value}\n";
        var report = await plant.Import.ImportAsync([A.File("events.csv", text)], null, Ct);
        Assert.Equal((RemarkKind.Refused, field), report.Files[0].Remarks.Select(r => (r.Kind, r.Column)).Single());
    }

    [Theory]
    [InlineData("pitches_out", "0")]
    [InlineData("pitches_out", "2.5")]
    [InlineData("take_up_mm", "-1")]
    [InlineData("broke", "perhaps")]
    [InlineData("new_pitches", "0")]
    [InlineData("new_teeth", "4")]
    public async Task A_fact_in_a_file_that_cannot_be_is_refused_at_its_column(string column, string value)
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var word = column switch
        {
            "broke" or "new_pitches" => "replacement",
            "new_teeth" => "sprocket_replaced",
            _ => "shortened",
        };
        var text = $"chain,event,counter_h_before,{column}\nC1,{word},100,{value}\n";
        var report = await plant.Import.ImportAsync([A.File("events.csv", text)], null, Ct);
        Assert.Equal((RemarkKind.Refused, column), report.Files[0].Remarks.Select(r => (r.Kind, r.Column)).Single());
    }

    // A file may leave the count out, as any fact that is not known: the limit then counts no pitch as taken out.
    [Fact]
    public async Task A_file_may_leave_out_how_many_pitches_were_taken_out()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var report = await plant.Import.ImportAsync([A.Events("C1,shortened,,100,100")], null, Ct);
        Assert.Equal((1, 0), (report.Taken, report.Refused));
    }

    [Fact]
    public async Task A_note_moves_nothing_whatever_it_says()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync(more: "pitches=100");
        await FaultsAsync(
            plant, A.Event(kind: ChainEventKind.Tensioned, beforeH: 100).Telling(e => e with { Note = "2 pitches out" }));
        await FaultsAsync(
            plant,
            A.Event(kind: ChainEventKind.Replacement, beforeH: 200).Telling(e => e with { Note = "the old chain broke" }));
        await using var db = plant.Db();
        var events = (await RawChain.LoadAsync(db, [1], Ct))[0].Events;
        Assert.Equal((2, false, 0), (events.Count, events.Any(e => e.Broke), Shortening.PitchesOut([.. events.Take(1)])));
    }

    [Fact]
    public async Task The_take_up_position_is_kept_with_a_reading_and_cannot_be_below_none()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading() with { TakeUpMm = 35.5 }, Ct);
        var refused = await plant.Desk.TakeReadingAsync(A.Reading(counterH: 200) with { TakeUpMm = -1 }, Ct);
        Assert.Equal("take_up_mm", Assert.Single(Assert.IsType<IntakeAnswer.Refused>(refused).Refusals).Field);
        await using var db = plant.Db();
        Assert.Equal([35.5], (await RawChain.LoadAsync(db, [1], Ct))[0].Readings.Select(r => r.TakeUpMm));
    }

    [Theory]
    [InlineData("40 3/16", Units.LengthUnit.Millimetre, Units.LengthUnit.Inch, "40 3/16 in")]
    [InlineData("40.18 in", Units.LengthUnit.Millimetre, Units.LengthUnit.Inch, "40.18 in")]
    [InlineData("1.021 m", Units.LengthUnit.Inch, Units.LengthUnit.Millimetre, "1.021 m")]
    [InlineData("1021; 1021.2", Units.LengthUnit.Millimetre, Units.LengthUnit.Millimetre, "1021; 1021.2 mm")]
    public async Task The_unit_is_kept_as_it_was_written(
        string written, Units.LengthUnit ofField, Units.LengthUnit unit, string asTold)
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        await plant.Desk.TakeReadingAsync(A.Reading(length: written, unit: ofField), Ct);
        await using var db = plant.Db();
        var row = Assert.Single(db.Readings);
        Assert.Equal((written, unit, asTold), (row.Written, row.Unit, row.LengthAsTold));
    }

    private static NewEvent Shortened(double counterH) => A.Event(kind: ChainEventKind.Shortened, beforeH: counterH);

    private static async Task<IReadOnlyList<(string Field, string Reason)>> FaultsAsync(TestPlant plant, NewEvent told) =>
        await plant.Desk.TakeEventAsync(told, Ct) is IntakeAnswer.Refused refused
            ? [.. refused.Refusals.Select(f => (f.Field, f.Reason.ToString()))]
            : [];
}
