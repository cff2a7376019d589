using Microsoft.EntityFrameworkCore;
using WearWatch.Gauging;
using WearWatch.Plant.Intake;
using WearWatch.Storage;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>Which strand was measured and how the chain was held goes in, is kept and comes out.</summary>
public sealed class StrandAndLoadTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Strand_load_and_caliper_go_round_through_the_files()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync(more: "strands=2");
        await plant.Desk.TakeReadingAsync(A.Reading(percent: 0.5) with { Strand = 1, Held = Held.Taut }, Ct);
        await plant.Desk.TakeReadingAsync(A.Reading(percent: 0.6) with { Strand = 2, Held = Held.Under(1250.5) }, Ct);
        await plant.Desk.TakeReadingAsync(
            A.Reading(length: MeasuredLengthText.OverRollers("345", "370"), pitches: 14, counterH: 900) with
            {
                Tool = Tool.Caliper,
            }, Ct);
        var before = await ReadingsAsync(plant, id);

        var folder = Path.Combine(plant.Folder.Root, "export");
        await plant.Get<FileExport>().WriteAsync(folder, Ct);
        await using var other = await TestPlant.OpenAsync();
        var report = await other.Import.ImportAsync(A.Folder(folder), null, Ct);

        Assert.Equal("", string.Join("; ", report.Files.SelectMany(f => f.Remarks)));
        Assert.Equal(3, before.Count);
        Assert.Equal(before, await ReadingsAsync(other, id));
        await using var db = other.Db();
        Assert.Contains(await db.Readings.ToListAsync(Ct), r => r.LengthAsTold == "345 inside 370 outside mm");
    }

    [Fact]
    public async Task A_strand_that_the_chain_does_not_have_waits_for_a_person()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync(more: "strands=2");
        var waiting = Assert.IsType<IntakeAnswer.Waiting>(await plant.Desk.TakeReadingAsync(A.Reading() with { Strand = 3 }, Ct));
        Assert.Contains("Strand 3", waiting.Why.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_strand_below_one_is_refused()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var refused = Assert.IsType<IntakeAnswer.Refused>(await plant.Desk.TakeReadingAsync(A.Reading() with { Strand = 0 }, Ct));
        Assert.Equal("strand", Assert.Single(refused.Refusals).Field);
    }

    [Fact]
    public void What_is_not_told_leaves_the_fingerprint_as_it_was_before_there_were_strands()
    {
        var plain = new Reading { Chain = "C1", Tool = Tool.Tape, Pitches = 40, LengthMm = 1020 };
        // Oracle: printf 'reading\037C1\037\037\037Tape\037\03740\0371020\037' | sha256sum
        Assert.Equal("3a172fd0f8cf719280cd0721da518b0e", Fingerprint.Of(plain));
        Assert.Equal(
            4, new[] { plain, plain with { Strand = 1 }, plain with { Held = Held.Taut }, plain with { Held = Held.Under(1) } }
            .Select(Fingerprint.Of).Distinct().Count());
    }

    private static async Task<IReadOnlyList<Reading>> ReadingsAsync(TestPlant plant, int id)
    {
        await using var db = plant.Db();
        return (await RawChain.LoadAsync(db, [id], Ct)).Single().Readings;
    }
}
