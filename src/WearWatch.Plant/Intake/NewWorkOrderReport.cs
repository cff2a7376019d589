using WearWatch.Plant.Files;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>A report on a work order on its way in.</summary>
/// <param name="Told">What was told.</param>
/// <param name="Key">Given by whoever sends it: the same key sent twice is stored once.</param>
/// <param name="ToldBy">Who or what told it.</param>
/// <param name="KeyOwner">Who made the key.</param>
public sealed record NewWorkOrderReport(WorkOrderAsWritten Told, string Key, string ToldBy, KeyOwner KeyOwner = default)
{
    /// <summary>What is kept of it; it is worked off after that.</summary>
    public WorkOrderReportRow ToRow(DateTimeOffset now) => new()
    {
        Key = Key,
        KeyOwner = KeyOwner,
        Fingerprint = Fingerprint.Of(Told),
        Swap = Told.Swap.Trim(),
        Number = Told.Number.Trim(),
        State = Told.State,
        DoneAt = Told.DoneAt?.ToUniversalTime(),
        HoursWorked = Told.HoursWorked,
        Material = Told.Material,
        Note = Told.Note.Trim(),
        ToldBy = ToldBy,
        ReceivedAt = now,
    };
}
