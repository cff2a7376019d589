using System.Text.Json.Serialization;
using WearWatch.Plant.Files;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What another system reports of the work order of a planned swap.</summary>
/// <param name="Swap">The id under which the swap went out, such as <c>swap-12</c>.</param>
/// <param name="OrderNumber">The number of the work order there.</param>
/// <param name="OrderState"><c>open</c>, <c>released</c>, <c>in_work</c>, <c>done</c> or <c>cancelled</c>.</param>
/// <param name="DoneAt">When the swap was done; with that state only.</param>
/// <param name="HoursWorked">How long it took, h.</param>
/// <param name="Material">What was used, in pitches or pieces; left out where nothing is said of it, empty for nothing.</param>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record WorkOrderEntryJson(
    string? Swap, string? OrderNumber, string? OrderState, DateTimeOffset? DoneAt, double? HoursWorked,
    IReadOnlyList<MaterialJson>? Material)
{
    /// <summary>What else there is to say.</summary>
    public string? Note { get; init; }

    /// <summary>Who reports it.</summary>
    public string? By { get; init; }

    /// <summary>The report; <see langword="null"/> where its state is no word for one.</summary>
    public WorkOrderAsWritten? Read() => Tokens.Read<WorkOrderState>(OrderState) is not { } state ? null : new()
    {
        Swap = Swap ?? "",
        Number = OrderNumber ?? "",
        State = state,
        DoneAt = DoneAt,
        HoursWorked = HoursWorked,
        Material = Material is null ? null : [.. Material.Select(m => new MaterialUsed(m.Part ?? "", m.Quantity ?? 0))],
        Note = Note ?? "",
    };
}

/// <summary>A part that was used.</summary>
/// <param name="Part">The part as the work package calls it, such as <c>16B-1 chain</c>, or its number in the store.</param>
/// <param name="Quantity">How much of it: pitches of chain, pieces of all else.</param>
internal sealed record MaterialJson(string? Part, int? Quantity);
