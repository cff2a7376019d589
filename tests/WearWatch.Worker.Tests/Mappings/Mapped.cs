using WearWatch.Plant.Mappings;
using WearWatch.Signals;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Mappings;

/// <summary>Mappings with defaults, so that a test states only what it is about.</summary>
internal static class Mapped
{
    /// <summary>Hours of <c>site/A/press/C1/hours</c>, in tenths, with their time in Unix seconds.</summary>
    public static SignalMappingRow Row(
        string topic = "site/{line}/+/{machine}/hours", string value = "$.run.tenths", string chain = "{machine}",
        TelemetryKind kind = TelemetryKind.RunningCounter, TimeNotation form = TimeNotation.UnixSeconds, int version = 0,
        string unit = "") => new()
        {
            Name = "Press hours",
            Version = version,
            Topic = topic,
            ValuePath = value,
            TimeForm = form,
            TimePath = form == TimeNotation.Arrival ? "" : "$.t",
            UnitPath = unit,
            Kind = kind,
            Scale = kind == TelemetryKind.RunningCounter ? 0.1 : 1,
            Chain = chain,
            SavedBy = "",
        };

    /// <summary>The mapping of a row that is sound.</summary>
    public static SignalMapping Of(SignalMappingRow row) => SignalMapping.Of(row, out var faults)
        ?? throw new InvalidOperationException(string.Join(" ", faults.Values));

    /// <summary>Saves it, as a person would.</summary>
    public static async Task SaveAsync(TestPlant plant, SignalMappingRow row) =>
        Assert.Empty(await plant.Get<SignalMappingDesk>().SaveAsync(row, "Ada"));
}
