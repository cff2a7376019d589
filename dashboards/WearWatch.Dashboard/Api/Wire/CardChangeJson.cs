namespace WearWatch.Dashboard.Api.Wire;

/// <summary>One field of a card that was changed.</summary>
internal sealed record CardChangeJson
{
    public required long Id { get; init; }

    public required DateTimeOffset At { get; init; }

    public required string By { get; init; }

    public required string Field { get; init; }

    public required string From { get; init; }

    public required string To { get; init; }

    public required string Why { get; init; }
}
