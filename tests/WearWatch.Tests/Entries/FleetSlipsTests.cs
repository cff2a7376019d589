using System.Globalization;
using WearWatch.Chains;
using WearWatch.Entries;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Entries;

/// <summary>
/// Entry doubt over 200 simulated chains entered reading by reading, against the truth of which entries are slips.
/// </summary>
public sealed class FleetSlipsTests
{
    private const double FarOff = 4;

    private static readonly Lazy<IReadOnlyList<Judged>> All = new(() => [.. Chains().SelectMany(JudgeEntries)]);

    [Fact]
    public void Slips_of_count_and_unit_that_lie_far_off_are_flagged_and_named()
    {
        var slips = All.Value.Where(j => j.Truth is "count" or "unit" && Math.Abs(j.Doubt.Deviations) > FarOff).ToList();
        var flagged = slips.Where(j => j.Doubt.IsDoubted).ToList();

        Assert.True(slips.Count >= 30, "The data hold at least thirty of them.");
        Assert.True(flagged.Count >= 0.95 * slips.Count, $"{flagged.Count} of {slips.Count} flagged");
        Assert.True(flagged.Count(j => j.IsNamedRightly) >= 0.90 * flagged.Count,
            $"{flagged.Count(j => j.IsNamedRightly)} of {flagged.Count} named");
    }

    [Fact]
    public void Fewer_than_one_honest_reading_in_a_hundred_is_doubted()
    {
        var honest = All.Value.Where(j => j.Truth == "").ToList();
        var doubted = honest.Count(j => j.Doubt.IsDoubted);

        Assert.True(honest.Count > 3800);
        Assert.True(doubted < 0.01 * honest.Count, $"{doubted} of {honest.Count} doubted");
    }

    private static IEnumerable<Judged> JudgeEntries(Entered chain)
    {
        var believed = new List<Reading>();
        for (var i = 0; i < chain.Readings.Count; i++)
        {
            var entry = chain.Readings[i];
            var (slip, truePercent) = chain.Slips.GetValueOrDefault(i, ("", 0));
            var expected = ExpectedReading.Of(
                new(chain.Card, believed, chain.Events, WearPrior.Broad, ProductionCalendar.AlwaysRunning), entry);
            Assert.NotNull(expected);
            var doubt = EntryDoubt.Of(chain.Card, entry, expected.Expected, expected.Alternatives);
            yield return new Judged(chain.Card, entry, slip, truePercent, doubt);
            // A person was asked: an honest reading is kept, a slip of count or unit is not.
            if (!doubt.IsDoubted || slip is "" or "misread") believed.Add(entry);
        }
    }

    private static IEnumerable<Entered> Chains()
    {
        var readings = Rows("fleet-learning/readings.csv").ToLookup(r => r["chain"]);
        var events = Rows("fleet-learning/events.csv").ToLookup(r => r["chain"]);
        var slips = Rows("entries/fleet_slips.csv").ToLookup(r => r["chain"]);
        return Rows("fleet-learning/chains.csv").Select(c => new Entered(
            new ChainCard
            {
                Name = c["chain"],
                PitchMm = Number(c["pitch_mm"])!.Value,
                FittedCounter = Hours(c["fitted_counter_h"]),
            },
            [.. readings[c["chain"]].Select(ToReading)],
            [.. events[c["chain"]].Select(ToEvent)],
            slips[c["chain"]].ToDictionary(
                s => int.Parse(s["reading"], CultureInfo.InvariantCulture),
                s => (s["slip"], Number(s["true_elongation_pct"])!.Value))));
    }

    private static Reading ToReading(Dictionary<string, string> row) => new()
    {
        Chain = row["chain"],
        Counter = Hours(row["counter_h"]),
        Tool = Enum.Parse<Tool>(row["tool"], ignoreCase: true),
        Pitches = int.Parse(row["pitches"], CultureInfo.InvariantCulture),
        LengthMm = Number(row["length"])!.Value,
        TemperatureC = Number(row["temperature_c"]),
    };

    private static ChainEvent ToEvent(Dictionary<string, string> row) => new()
    {
        Chain = row["chain"],
        Kind = row["event"] == "replacement" ? ChainEventKind.Replacement : ChainEventKind.MeterReset,
        CounterBefore = Hours(row["counter_h_before"]),
        CounterAfter = Hours(row["counter_h_after"]),
    };

    private static IEnumerable<Dictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "data", file));
        var columns = lines[0].Split(',');
        return lines.Skip(1).Select(line => columns.Zip(line.Split(',')).ToDictionary(p => p.First, p => p.Second));
    }

    private static double? Number(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);

    private static RunningHours? Hours(string text) => Number(text) is { } hours ? new RunningHours(hours) : null;

    private sealed record Entered(
        ChainCard Card, IReadOnlyList<Reading> Readings, IReadOnlyList<ChainEvent> Events,
        Dictionary<int, (string Slip, double TruePercent)> Slips);

    private sealed record Judged(ChainCard Card, Reading Entry, string Truth, double TruePercent, EntryDoubt Doubt)
    {
        private double TruePitchMm => Card.PitchMm * (1 + TruePercent / 100);

        public bool IsNamedRightly => Doubt.Slips is [var first, ..] && Truth switch
        {
            "count" => first.Kind == SlipKind.PitchesMiscounted && first.Pitches == (int)Math.Round(Entry.LengthMm / TruePitchMm),
            _ => first.Kind is SlipKind.WrongUnit or SlipKind.DecimalPoint
                && Math.Abs(first.LengthMm / (Entry.Pitches * TruePitchMm) - 1) < 0.02,
        };
    }
}
