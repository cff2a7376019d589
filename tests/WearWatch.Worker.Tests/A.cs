using System.Text;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Units;

namespace WearWatch.Worker.Tests;

/// <summary>Things with defaults, so that a test states only what it is about.</summary>
internal static class A
{
    public const string ReadingsHeader = "chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c";
    public const string EventsHeader = "chain,event,taken_at,counter_h_before,counter_h_after";

    private static readonly string[] Names = ["readings.csv", "events.csv", "chains.csv"];

    private static int made;

    public static string Data(params string[] path) => Path.Combine([AppContext.BaseDirectory, "data", .. path]);

    public static ImportFile File(string name, string text) => File(name, Encoding.UTF8.GetBytes(text));

    public static ImportFile File(string name, byte[] bytes) =>
        new(name, () => new MemoryStream(bytes, writable: false)) { By = "Ina" };

    /// <summary>A file of readings: a header and these rows.</summary>
    public static ImportFile Readings(params string[] rows) =>
        File("readings.csv", $"{ReadingsHeader}\n{string.Join('\n', rows)}\n");

    /// <summary>A file of events: a header and these rows.</summary>
    public static ImportFile Events(params string[] rows) => File("events.csv", $"{EventsHeader}\n{string.Join('\n', rows)}\n");

    /// <summary>A row of readings.csv of 40 pitches of 25.4 mm, elongated by so many percent.</summary>
    public static string Row(string chain = "C1", double counterH = 100, double percent = 0.5) =>
        FormattableString.Invariant($"{chain},,{counterH},tape,,40,{Length(percent)},mm,");

    /// <summary>The length of 40 pitches of 25.4 mm, elongated by so many percent.</summary>
    public static string Length(double percent) => FormattableString.Invariant($"{40 * 25.4 * (1 + percent / 100):0.00}");

    public static NewReading Reading(
        string chain = "C1", double? counterH = 100, double percent = 0.5, string? length = null, string? key = null,
        bool confirmed = false,
        DateTimeOffset? takenAt = null, int pitches = 40, LengthUnit unit = LengthUnit.Millimetre) => new()
        {
            Key = key ?? $"key {Interlocked.Increment(ref made)}",
            Chain = chain,
            TakenAt = takenAt,
            CounterH = counterH,
            Tool = Tool.Tape,
            Pitches = pitches,
            Length = length ?? Length(percent),
            Unit = unit,
            ToldBy = "test",
            Confirmed = confirmed,
        };

    public static NewEvent Event(
        string chain = "C1", ChainEventKind kind = ChainEventKind.Oiling, double? beforeH = null, double? afterH = null,
        DateTimeOffset? at = null, string? key = null) =>
        new()
        {
            Key = key ?? $"key {Interlocked.Increment(ref made)}",
            Told = new ChainEvent
            {
                Chain = chain,
                Kind = kind,
                At = at,
                CounterBefore = RowFields.Hours(beforeH),
                CounterAfter = RowFields.Hours(afterH),
            },
            ToldBy = "test",
        };

    /// <summary>The event with more that was told of it.</summary>
    public static NewEvent Telling(this NewEvent told, Func<ChainEvent, ChainEvent> more) => told with { Told = more(told.Told) };

    /// <summary>The files of a folder of the test data.</summary>
    public static ImportFile[] Folder(string path) =>
        [.. Names.Select(f => Path.Combine(path, f)).Where(System.IO.File.Exists).Select(f => ImportFile.OnDisk(f, "Ina"))];
}
