using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Checks a report on a work order by itself, before it is kept. What it contradicts is looked for after that.</summary>
internal static class WorkOrderEntryCheck
{
    private const int LongestNumber = 80;
    private const int LongestNote = 400;
    private const int MostParts = 100;
    private const int MostOfAPart = 100_000;
    private const double MostHours = 10_000;

    /// <summary>What is wrong with it, field by field; empty when it can be kept.</summary>
    public static List<Refusal> Faults(NewWorkOrderReport report, DateTimeOffset now)
    {
        var (told, faults) = (report.Told, new List<Refusal>());
        if (string.IsNullOrWhiteSpace(report.Key) || report.Key.Length > RowFields.LongestText)
            faults.Add(new("key", $"A key of 1 to 200 characters distinguishes this entry from others."));
        if (told.Swap.Trim().Length is 0 or > RowFields.LongestText)
            faults.Add(new("swap", $"Write the id under which the swap went out, such as swap-12."));
        if (told.Number.Trim().Length > LongestNumber) faults.Add(new("order_number", $"At most {LongestNumber} characters."));
        if (told.Note.Trim().Length > LongestNote) faults.Add(new("note", $"At most {LongestNote} characters."));
        if (told is { State: WorkOrderState.Done, DoneAt: null }) faults.Add(new("done_at", $"Say when the swap was done."));
        if (told is { State: not WorkOrderState.Done, DoneAt: not null })
            faults.Add(new("done_at", $"Leave it out: only a swap that is done has it."));
        if (Clocks.FaultOf(told.DoneAt, now) is { } time) faults.Add(new("done_at", time));
        if (told.HoursWorked is { } hours && hours is not (>= 0 and <= MostHours))
            faults.Add(new("hours_worked", $"0 to {MostHours} hours."));
        if (told.Material is { Count: > MostParts }) faults.Add(new("material", $"At most {MostParts} parts."));
        if (told.Material?.FirstOrDefault(m => !IsPart(m)) is { } bad)
            faults.Add(new("material", $"'{bad.Part}': write a part and a quantity of 1 to {MostOfAPart}."));
        return faults;
    }

    private static bool IsPart(MaterialUsed used) =>
        used is { Quantity: > 0 and <= MostOfAPart, Part.Length: > 0 and <= RowFields.LongestText };
}
