using WearWatch.Chains.Families;

namespace WearWatch.Storage.Rows;

/// <summary>A photo of a finding. Rows are only ever added.</summary>
public sealed class PhotoRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Given by whoever sends it: sent twice, it is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>The key of the look that it belongs to.</summary>
    public required string LookKey { get; init; }

    public InspectionPoint Point { get; init; }

    /// <summary>The picture: JPEG, checked, without what a camera writes beside it.</summary>
    public required byte[] Jpeg { get; init; }

    public string ToldBy { get; init; } = "";

    public DateTimeOffset ReceivedAt { get; init; }
}
