namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A chain that is to be oiled, or whose oiler is to be looked at.</summary>
internal sealed record OilDueJson(
    string Chain, string Line, string Position, string State, DateTimeOffset DueAt, bool LookAtOiler, string Grade, int Missed,
    string? Warning);
