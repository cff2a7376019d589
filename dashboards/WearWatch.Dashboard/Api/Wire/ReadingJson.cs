using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A reading as it was told, its facts by the names of readings.csv; one that no longer stands is left out.</summary>
internal sealed record ReadingJson
{
    public required long Id { get; init; }

    public required string Chain { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterH { get; init; }

    public required string Tool { get; init; }

    public required string Place { get; init; }

    public required int Pitches { get; init; }

    public required string Length { get; init; }

    public required string Unit { get; init; }

    public required double LengthMm { get; init; }

    public double? TemperatureC { get; init; }

    public int? Strand { get; init; }

    public required bool Taut { get; init; }

    public double? LoadN { get; init; }

    public double? TakeUpMm { get; init; }

    public required string Standing { get; init; }

    public required string Why { get; init; }

    public required string ToldBy { get; init; }

    public required DateTimeOffset ReceivedAt { get; init; }

    public static ReadingJson Of(ReadingRow row, string chain) => new()
    {
        Id = row.Id,
        Chain = chain,
        TakenAt = row.TakenAt,
        CounterH = row.CounterH,
        Tool = Tokens.Of(row.Tool),
        Place = row.Place,
        Pitches = row.Pitches,
        Length = row.Written,
        Unit = Tokens.Of(row.Unit),
        LengthMm = row.LengthMm,
        TemperatureC = row.TemperatureC,
        Strand = row.Strand,
        Taut = row.Taut,
        LoadN = row.LoadN,
        TakeUpMm = row.TakeUpMm,
        Standing = Tokens.Of(row.Standing),
        Why = row.WhyWaiting,
        ToldBy = row.ToldBy,
        ReceivedAt = row.ReceivedAt,
    };
}
