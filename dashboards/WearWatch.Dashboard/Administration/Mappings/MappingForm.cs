using WearWatch.Dashboard.Kit.Language;
using WearWatch.Signals;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Mappings;

/// <summary>A mapping of a foreign signal as it is typed. What is wrong with it says whoever keeps it.</summary>
public sealed class MappingForm
{
    public string Name { get; set; } = "";

    /// <summary>The version that was loaded; 0 for a new mapping.</summary>
    public int Version { get; init; }

    public SignalSource Source { get; set; }

    public string Topic { get; set; } = "";

    public string ValuePath { get; set; } = "";

    public TimeNotation TimeForm { get; set; }

    public string TimePath { get; set; } = "";

    public string UnitPath { get; set; } = "";

    public TelemetryKind Kind { get; set; }

    public string Scale { get; set; } = "1";

    public string Offset { get; set; } = "0";

    public string Chain { get; set; } = "";

    /// <summary>Foreign words and their chains, <c>word = chain</c>, a line each.</summary>
    public string Words { get; set; } = "";

    public bool IsActive { get; set; } = true;

    /// <summary>A mapping as a person would type it.</summary>
    /// <param name="row">What it says, perhaps in an earlier version.</param>
    /// <param name="version">The newest version, after which it is saved.</param>
    public static MappingForm Of(SignalMappingRow row, int version) => new()
    {
        Name = row.Name,
        Version = version,
        Source = row.Source,
        Topic = row.Topic,
        ValuePath = row.ValuePath,
        TimeForm = row.TimeForm,
        TimePath = row.TimePath,
        UnitPath = row.UnitPath,
        Kind = row.Kind,
        Scale = TypedNumber.Text(row.Scale, "0.##########"),
        Offset = TypedNumber.Text(row.Offset, "0.##########"),
        Chain = row.Chain,
        Words = string.Join('\n', row.Words.Select(w => $"{w.Word} = {w.Chain}")),
        IsActive = row.IsActive,
    };

    /// <summary>What is typed; a number that is none is kept as such and refused.</summary>
    public SignalMappingRow Read() => new()
    {
        Name = Name.Trim(),
        Version = Version,
        Source = Source,
        Topic = Topic.Trim(),
        ValuePath = ValuePath.Trim(),
        TimeForm = TimeForm,
        TimePath = TimePath.Trim(),
        UnitPath = UnitPath.Trim(),
        Kind = Kind,
        Scale = TypedNumber.Of(Scale) ?? double.NaN,
        Offset = TypedNumber.Of(Offset) ?? double.NaN,
        Chain = Chain.Trim(),
        Words = [.. Words.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(Word)],
        IsActive = IsActive,
        SavedBy = "",
    };

    /// <summary>Takes the topic of a message that came.</summary>
    public void Use(HeardMessageRow message) => (Source, Topic) = (SignalSource.MqttJson, message.Topic);

    private static ChainWord Word(string line) => line.Split('=', 2, StringSplitOptions.TrimEntries) is [var word, var chain]
        ? new ChainWord(word, chain)
        : new ChainWord(line, "");
}
