using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Intake;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Worker.Tests.Tracking;

public sealed class KeptTracksTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_track_is_stored_with_each_reading_and_the_next_one_carries_it_on()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        for (var i = 1; i <= 3; i++) await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * i, percent: 0.3 * i), Ct);
        var stored = await RowAsync(plant, id);
        await using (var db = plant.Db()) Assert.Equal(await db.Readings.MaxAsync(r => r.Id, Ct), stored.LastReadingId);

        // Poisoned: it shows in what follows only if that carries on from here.
        await PoisonAsync(plant, id);
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 2000, percent: 1.2), Ct);
        Assert.Equal(77, Track(await RowAsync(plant, id)).Observations[0].TrackPercent);
    }

    [Fact]
    public async Task Another_knowledge_or_build_follows_the_chain_from_its_raw_readings()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        for (var i = 1; i <= 3; i++) await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500 * i, percent: 0.3 * i), Ct);
        var before = await RowAsync(plant, id);

        await PoisonAsync(plant, id, version: "another build");
        await plant.Review.ReviewAsync(null, null, Ct);

        var after = await RowAsync(plant, id);
        Assert.Equal((before.Version, before.State), (after.Version, after.State));
    }

    [Fact]
    public async Task A_correction_follows_the_chain_from_its_raw_readings()
    {
        await using var plant = await TestPlant.OpenAsync();
        var id = await plant.AddChainAsync();
        var first = Assert.IsType<IntakeAnswer.Taken>(
            await plant.Desk.TakeReadingAsync(A.Reading(counterH: 500, percent: 0.3), Ct));
        await plant.Desk.TakeReadingAsync(A.Reading(counterH: 1000, percent: 0.6), Ct);
        await PoisonAsync(plant, id);

        await plant.Desk.CorrectAsync(first.Id, A.Reading(counterH: 500, percent: 0.32), Ct);

        Assert.NotEqual(77, Track(await RowAsync(plant, id)).Observations[0].TrackPercent);
    }

    private static async Task<TrackRow> RowAsync(TestPlant plant, int id)
    {
        await using var db = plant.Db();
        return await db.Tracks.AsNoTracking().SingleAsync(t => t.ChainId == id, Ct);
    }

    private static async Task PoisonAsync(TestPlant plant, int id, string? version = null)
    {
        await using var db = plant.Db();
        var row = await db.Tracks.SingleAsync(t => t.ChainId == id, Ct);
        var track = Track(row);
        track = track with { Observations = [track.Observations[0] with { TrackPercent = 77 }, .. track.Observations.Skip(1)] };
        (row.State, row.Version) = (JsonSerializer.Serialize(track), version ?? row.Version);
        await db.SaveChangesAsync(Ct);
    }

    private static CarriedTrack Track(TrackRow row) => JsonSerializer.Deserialize<CarriedTrack>(row.State)!;
}
