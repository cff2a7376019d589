namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A chain that is to be oiled, or whose oiler is to be looked at.</summary>
internal sealed record OilDueJson
{
    public required string Chain { get; init; }

    public required string Line { get; init; }

    public required string Position { get; init; }

    public required string State { get; init; }

    public required DateTimeOffset DueAt { get; init; }

    public required bool LookAtOiler { get; init; }

    public required string Grade { get; init; }

    public required int Missed { get; init; }

    public required string? Warning { get; init; }
}
