namespace WearWatch.Dashboard.Api.Wire;

/// <summary>Something that happened to a chain.</summary>
internal sealed record EventJson(
    long Id, string Chain, string Event, DateTimeOffset? TakenAt, double? CounterHBefore, double? CounterHAfter, string Note, string ToldBy,
    DateTimeOffset ReceivedAt, string Lot, string? OilMethod, string OilGrade, double? OilAmountMl);
