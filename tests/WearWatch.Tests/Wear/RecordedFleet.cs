using System.Globalization;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>
/// A simulated fleet in the project's file formats. Its files are known to be sound, so a plain split reads them.
/// </summary>
internal sealed class RecordedFleet
{
    private readonly ILookup<string, Reading> readings;
    private readonly ILookup<string, ChainEvent> events;

    private RecordedFleet(string folder)
    {
        Cards = Rows(folder, "chains.csv").ConvertAll(CardOf);
        readings = Rows(folder, "readings.csv").Select(ReadingOf).ToLookup(r => r.Chain);
        events = Rows(folder, "events.csv").Select(EventOf).ToLookup(e => e.Chain);
        Histories = Cards.ToDictionary(c => c.Name, c => ChainHistory.Take(c, Readings(c), Events(c)));
    }

    public List<ChainCard> Cards { get; }

    public Dictionary<string, ChainHistory> Histories { get; }

    public static RecordedFleet Load(string folder) => new(folder);

    public IReadOnlyList<Reading> Readings(ChainCard card) => [.. readings[card.Name]];

    public IReadOnlyList<ChainEvent> Events(ChainCard card) => [.. events[card.Name]];

    public IReadOnlyList<Observation> Observations(ChainCard card) => Histories[card.Name].Current.Observations;

    public static List<string[]> Rows(string folder, string file) =>
        [.. File.ReadLines(Path.Combine([AppContext.BaseDirectory, "data", .. folder.Split('/'), file])).Skip(1)
            .Select(l => l.Split(','))];

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static double? NumberOrNull(string text) => text.Length == 0 ? null : Number(text);

    private static RunningHours? Hours(string text) => NumberOrNull(text) is { } h ? new RunningHours(h) : null;

    private static ChainCard CardOf(string[] row) => new()
    {
        Name = row[0],
        PitchMm = Number(row[4]),
        FittedCounter = Hours(row[7]),
        Duty = new()
        {
            RelativeLoad = Number(row[9]),
            SpeedMetresPerSecond = Number(row[10]),
            Lubrication = Enum.Parse<LubricationState>(row[11], ignoreCase: true),
            Dust = Enum.Parse<DustLevel>(row[12], ignoreCase: true),
        },
    };

    private static Reading ReadingOf(string[] row) => new()
    {
        Chain = row[0],
        Counter = Hours(row[2]),
        Tool = Enum.Parse<Tool>(row[3], ignoreCase: true),
        Pitches = int.Parse(row[5], CultureInfo.InvariantCulture),
        LengthMm = Number(row[6]) * (row[7] == "in" ? 25.4 : 1),
    };

    private static ChainEvent EventOf(string[] row) => new()
    {
        Chain = row[0],
        Kind = row[1] == "replacement" ? ChainEventKind.Replacement : ChainEventKind.MeterReset,
        CounterBefore = Hours(row[3]),
        CounterAfter = Hours(row[4]),
    };
}
