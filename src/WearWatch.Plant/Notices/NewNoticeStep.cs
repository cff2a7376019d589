using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Notices;

/// <summary>What a person does about a notice.</summary>
public sealed record NewNoticeStep
{
    /// <summary>What is done.</summary>
    public required NoticeStepKind Kind { get; init; }

    /// <summary>Given by whoever sends it: sent twice, it is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>Who does it.</summary>
    public required string By { get; init; }

    /// <summary>Of an assignment: to whom; empty for nobody.</summary>
    public string Person { get; init; } = "";

    /// <summary>Of putting it off: until which day of the plant, on which it asks again.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>What is said beside it.</summary>
    public string Comment { get; init; } = "";
}
