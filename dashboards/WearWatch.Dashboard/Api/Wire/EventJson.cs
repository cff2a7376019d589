using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>Something that happened to a chain; its facts by the names of events.csv.</summary>
internal sealed record EventJson
{
    public required long Id { get; init; }

    public required string Chain { get; init; }

    public required string Event { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterHBefore { get; init; }

    public double? CounterHAfter { get; init; }

    public required string Note { get; init; }

    public required string ToldBy { get; init; }

    public required DateTimeOffset ReceivedAt { get; init; }

    public required string Lot { get; init; }

    public string? OilMethod { get; init; }

    public required string OilGrade { get; init; }

    public double? OilAmountMl { get; init; }

    public required bool Broke { get; init; }

    public int? PitchesOut { get; init; }

    public double? TakeUpMm { get; init; }

    public static EventJson Of(EventRow row, string chain) => new()
    {
        Id = row.Id,
        Chain = chain,
        Event = Tokens.Of(row.Kind),
        TakenAt = row.At,
        CounterHBefore = row.CounterBeforeH,
        CounterHAfter = row.CounterAfterH,
        Note = row.Note,
        ToldBy = row.ToldBy,
        ReceivedAt = row.ReceivedAt,
        Lot = row.Lot,
        OilMethod = row.OilMethod is { } method ? Tokens.Of(method) : null,
        OilGrade = row.OilGrade,
        OilAmountMl = row.OilAmountMl,
        Broke = row.Broke,
        PitchesOut = row.PitchesOut,
        TakeUpMm = row.TakeUpMm,
    };
}
