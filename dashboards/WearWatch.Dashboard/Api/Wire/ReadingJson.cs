namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A reading as it was told; one that was replaced or withdrawn is left out.</summary>
internal sealed record ReadingJson(
    long Id, string Chain, DateTimeOffset? TakenAt, double? CounterH, string Tool, string Place, int Pitches, double LengthMm, double? TemperatureC, int? Strand, bool Taut, double? LoadN,
    string Standing, string Why, string ToldBy, DateTimeOffset ReceivedAt);
