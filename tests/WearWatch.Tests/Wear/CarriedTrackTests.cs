using System.Text.Json;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>A stored track that is carried on gives what following the chain from its raw readings gives, to the bit.</summary>
public sealed class CarriedTrackTests
{
    private static readonly RecordedFleet Fleet = RecordedFleet.Load("wear/detect");

    [Fact]
    public void Readings_that_arrive_in_any_order_leave_the_same_bits_as_all_of_them_at_once()
    {
        var chance = new Random(20);
        foreach (var card in Fleet.Cards.Where((_, i) => i % 10 == 0))
        {
            // Dates make the order in which they were taken known, however late they arrive.
            var taken = Fleet.Readings(card).Select((r, i) => r with { TakenAt = A.Monday.AddDays(i - 900) }).ToList();
            var arrived = new List<Reading>();
            CarriedTrack? stored = null;
            foreach (var reading in taken.OrderBy(r =>
                r.TakenAt!.Value.Ticks / TimeSpan.TicksPerDay + (chance.Next(6) == 0 ? 5 : 0)))
            {
                arrived.Add(reading);
                stored = Kept(Assess(card, [.. arrived.OrderBy(r => r.TakenAt)], stored).Carried);
            }

            var fresh = Assess(card, taken, null);
            Assert.Equal(JsonSerializer.Serialize(fresh.Carried), JsonSerializer.Serialize(stored));
            Assert.Equal(fresh.Forecast.PercentilesHours, Assess(card, taken, stored).Forecast.PercentilesHours);
        }
    }

    [Fact]
    public void A_reading_that_comes_after_the_last_costs_one_step()
    {
        var readings = A.Readings(0.2, 300, 1500, 3000, 4500);
        // Poisoned: were the earlier readings looked at again, the poison would be gone.
        var stored = Kept(Assess(A.Card(), readings[..3], null).Carried);
        var poisoned =
            stored with { Observations = [stored.Observations[0] with { TrackPercent = 77 }, .. stored.Observations.Skip(1)] };

        Assert.Equal(77, Assess(A.Card(), readings, poisoned).Observations[0].TrackPercent);
        Assert.Same(poisoned, Assess(A.Card(), readings[..3], poisoned).Carried);
    }

    public static TheoryData<string> Changes =>
        ["correction", "older reading", "withdrawal", "replacement", "reset", "prior", "fitting"];

    [Theory]
    [MemberData(nameof(Changes))]
    public void Anything_else_follows_the_chain_anew(string change)
    {
        var readings = A.Readings(0.2, 300, 1500, 3000, 4500);
        var stored = Kept(Assess(A.Card(), readings, null).Carried);
        var poisoned =
            stored with { Observations = [stored.Observations[0] with { TrackPercent = 77 }, .. stored.Observations.Skip(1)] };
        var (card, events, prior) = (A.Card(), new List<ChainEvent>(), WearPrior.Broad);
        switch (change)
        {
            case "correction": readings[1] = A.Reading(1500, 0.52); break;
            case "older reading": readings = [.. readings[..1], A.Reading(900, 0.4), .. readings[1..]]; break;
            case "withdrawal": readings = readings[..^1]; break;
            case "replacement": events.Add(A.Replacement(1000)); break;
            case "reset": events.Add(A.Reset(1600, 100)); break;
            case "prior": prior = prior with { MeanLogRate = -2 }; break;
            default: card = A.Card(fittedCounter: 200); break;
        }

        var carried = Assessment.Of(card, readings, events, prior, ProductionCalendar.AlwaysRunning, A.Monday, from: poisoned);
        var fresh = Assessment.Of(card, readings, events, prior, ProductionCalendar.AlwaysRunning, A.Monday);
        Assert.Equal(JsonSerializer.Serialize(fresh.Carried), JsonSerializer.Serialize(carried.Carried));
    }

    private static Assessment Assess(ChainCard card, IReadOnlyList<Reading> readings, CarriedTrack? from) =>
        Assessment.Of(card, readings, [], WearPrior.Broad, ProductionCalendar.AlwaysRunning, A.Monday, from: from);

    private static CarriedTrack Kept(CarriedTrack track) =>
        JsonSerializer.Deserialize<CarriedTrack>(JsonSerializer.Serialize(track))!;
}
