using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Running;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage.Tests;

public sealed class RoundTripTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_card_comes_back_as_it_was()
    {
        var card = new ChainCard
        {
            Name = "C1",
            Line = "L",
            Position = "P",
            ChainType = "16B-2",
            Family = ChainFamily.Named("conveyor"),
            PitchMm = 25.4,
            Pitches = 120,
            SprocketTeeth = [17, 75],
            FittedAt = new DateTimeOffset(2026, 2, 3, 4, 5, 6, TimeSpan.Zero),
            FittedCounter = new RunningHours(12.5),
            Lot = "B-2417",
            LimitPercent = 2.5,
            LimitSetReason = "by the maker",
            Strands = 2,
            FixedCentres = true,
            RunsInParallel = true,
            Timing = true,
            Positioning = true,
            HighPerformance = true,
            Lifts = true,
            CentreDistanceMm = 800,
            TakeUpTravelMm = 40,
            GroupDifferenceMm = 12.5,
            Material = ChainMaterial.Stainless,
            OilPlace = OilPlace.Food,
            Kit = new SpareKit("K1 every 4th pitch", "4711"),
            OilingIntervalHours = 250,
            OilingSurroundingsFactor = 0.5,
            Duty = new Duty
            {
                RelativeLoad = 0.7,
                SpeedMetresPerSecond = 1.5,
                Lubrication = LubricationState.Poor,
                Dust = DustLevel.Heavy,
            },
        };
        await using var store = await TemporaryDb.MakeAsync();
        await using (var db = store.CreateDbContext())
        {
            var row = new ChainRow { Name = card.Name };
            row.Take(card);
            db.Chains.Add(row);
            await db.SaveChangesAsync(Ct);
        }

        await using var after = store.CreateDbContext();
        var kept = (await after.Chains.SingleAsync(Ct)).ToCard();
        Assert.Equal(card.SprocketTeeth, kept.SprocketTeeth);
        Assert.Equal(card with { SprocketTeeth = [] }, kept with { SprocketTeeth = [] });
    }

    [Fact]
    public async Task A_forecast_comes_back_bit_for_bit()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var row = A.Forecast(await store.AddChainAsync());
        await using (var db = store.CreateDbContext())
        {
            db.Forecasts.Add(row);
            await db.SaveChangesAsync(Ct);
        }

        await using var after = store.CreateDbContext();
        Assert.Equal(row.PercentilesH, (await after.Forecasts.SingleAsync(Ct)).PercentilesH);
    }

    [Fact]
    public async Task Moments_are_kept_to_the_tick_and_can_be_compared_in_a_query()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        var at = new DateTimeOffset(2026, 1, 1, 12, 0, 0, TimeSpan.FromHours(2)).AddTicks(7);
        await store.AddAsync(A.Reading(chain, takenAt: at));
        await using var db = store.CreateDbContext();
        Assert.Equal(at, (await db.Readings.SingleAsync(r => r.TakenAt >= at && r.TakenAt < at.AddTicks(1), Ct)).TakenAt);
    }

    [Fact]
    public async Task Rows_added_many_at_a_time_are_the_same_as_those_added_one_by_one()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var chain = await store.AddChainAsync();
        var one = await store.AddAsync(
            A.Reading(chain, counterH: 1 / 3.0, takenAt: new DateTimeOffset(2026, 1, 2, 3, 4, 5, TimeSpan.FromHours(2))));
        var many = A.Reading(chain, counterH: 1 / 3.0, takenAt: one.TakenAt, corrects: one.Id, standing: ReadingStanding.Waiting);
        await using var db = store.CreateDbContext();
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.AddManyAsync([many], Ct));
        await using (var transaction = await db.Database.BeginTransactionAsync(Ct))
        {
            await db.AddManyAsync([many, A.Reading(chain)], Ct);
            await transaction.CommitAsync(Ct);
        }

        var back = await db.Readings.AsNoTracking().SingleAsync(r => r.Key == many.Key, Ct);
        Assert.Equal(
            (many.ChainId, many.CounterH, many.TakenAt, many.CorrectsId, many.Standing, many.LengthMm, null),
            (back.ChainId, back.CounterH, back.TakenAt, back.CorrectsId, back.Standing, back.LengthMm, back.TemperatureC));
        Assert.Equal(3, await db.Readings.CountAsync(Ct));
    }
}
