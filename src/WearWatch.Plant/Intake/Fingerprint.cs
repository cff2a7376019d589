using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Intake;

/// <summary>A short name for what was told, by its content: the same told again has the same name.</summary>
public static class Fingerprint
{
    private const int Bytes = 16;
    private static readonly string[] Nothing = [];

    /// <summary>The fingerprint of a reading. What is not told adds nothing, so that fields can be added later.</summary>
    public static string Of(Reading reading) => Hash([
        "reading", reading.Chain, Text(reading.TakenAt), Text(reading.Counter?.Hours), reading.Tool.ToString(), reading.Place,
        Text(reading.Pitches), Text(reading.LengthMm), Text(reading.TemperatureC),
        .. reading.Strand is { } strand ? ["strand", Text(strand)] : Nothing,
        .. reading.Held != default ? ["held", reading.Held.ToString()] : Nothing,
        .. TakeUp(reading.TakeUpMm)]);

    /// <summary>The fingerprint of an event.</summary>
    /// <remarks>
    /// What could not be told once and is not told now leaves no trace, so that an event keeps the name that it had.
    /// </remarks>
    public static string Of(ChainEvent happening)
    {
        string[] lot = happening.Lot.Length > 0 ? [happening.Lot] : [];
        string[] oil = happening.Oil == OilApplied.Untold
            ? []
            : [happening.Oil.Method?.ToString() ?? "", happening.Oil.Grade, Text(happening.Oil.AmountMl)];
        return Hash([
            "event", happening.Chain, happening.Kind.ToString(), Text(happening.At), Text(happening.CounterBefore?.Hours),
            Text(happening.CounterAfter?.Hours), happening.Note, .. lot, .. oil,
            .. happening.Broke ? ["broke"] : Nothing,
            .. happening.PitchesOut is { } pitches ? ["pitches out", Text(pitches)] : Nothing,
            .. happening.NewPitches is { } fitted ? ["new pitches", Text(fitted)] : Nothing,
            .. happening.NewTeeth is { } teeth ? ["new teeth", Text(teeth)] : Nothing,
            .. TakeUp(happening.TakeUpMm)]);
    }

    /// <summary>The fingerprint of measures of links.</summary>
    public static string Of(NewLinkMeasures entry) => Hash([
        "links", entry.Chain, Text(entry.TakenAt), Text(entry.CounterH), entry.Place, entry.Tool.ToString(), entry.OneLink,
        entry.SeveralLinks, Text(entry.Links), entry.D1, entry.D2, entry.Unit.ToString()]);

    /// <summary>The fingerprint of a reading of a part.</summary>
    public static string Of(PartAsWritten told) => Hash([
        "part", told.Chain, Text(told.TakenAt), Text(told.CounterH), told.Part, told.Place, told.Value, told.New,
        told.Limit, told.LimitSource, told.Unit.ToString()]);

    /// <summary>The fingerprint of a report on a work order.</summary>
    public static string Of(WorkOrderAsWritten told) => Hash([
        "work order", told.Swap, told.Number, told.State.ToString(), Text(told.DoneAt), Text(told.HoursWorked), told.Note,
        .. told.Material is null ? Nothing : ["material", .. told.Material.Select(m => $"{m.Quantity} {m.Part}")]]);

    private static string[] TakeUp(double? mm) => mm is null ? Nothing : ["take-up", Text(mm)];

    private static string Hash(params ReadOnlySpan<string> parts) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\u001f', parts)))[..Bytes]);

    private static string Text(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    private static string Text(DateTimeOffset? moment) => moment?.UtcTicks.ToString(CultureInfo.InvariantCulture) ?? "";
}
