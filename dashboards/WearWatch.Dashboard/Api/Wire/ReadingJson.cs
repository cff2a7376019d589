using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using WearWatch.Gauging;
using WearWatch.Plant.Files;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// A reading as it was told: the fields of <see cref="ReadingColumns"/>, its length as it was written and in millimetres; one
/// that no longer stands is left out.
/// </summary>
internal sealed record ReadingJson
{
    public required long Id { get; init; }

    public required string Chain { get; init; }

    public required string Length { get; init; }

    public required string Unit { get; init; }

    public required double LengthMm { get; init; }

    public required string Standing { get; init; }

    public required string Why { get; init; }

    public required string ToldBy { get; init; }

    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary>What was told.</summary>
    [JsonIgnore]
    public Reading Told { get; init; } = null!;

    public static ReadingJson Of(ReadingRow row, string chain) => new()
    {
        Id = row.Id,
        Chain = chain,
        Length = row.Written,
        Unit = Tokens.Of(row.Unit),
        LengthMm = row.LengthMm,
        Standing = Tokens.Of(row.Standing),
        Why = T[row.WhyWaiting],
        ToldBy = row.ToldBy,
        ReceivedAt = row.ReceivedAt,
        Told = row.ToReading(chain),
    };

    /// <summary>Adds the reading's fields to the shape.</summary>
    public static void Shape(JsonTypeInfo shape)
    {
        if (shape.Type != typeof(ReadingJson)) return;
        ColumnProperties.AddAnswer<ReadingJson, Reading>(
            shape, 2, ReadingColumns.BesideLength, wire => wire.Told, ReadingText.Blank(""));
    }
}
