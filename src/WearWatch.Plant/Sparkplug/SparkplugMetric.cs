using System.Text.Json;

namespace WearWatch.Plant.Sparkplug;

/// <summary>A metric as it stands in a payload.</summary>
/// <param name="Name">Its name; empty where the alias stands for it.</param>
/// <param name="Alias">Its alias; null for none.</param>
/// <param name="At">Its time; null where the payload's holds.</param>
/// <param name="DataType">Its type by the specification's numbers; 0 where the birth has told it.</param>
/// <param name="IsHistorical">Whether it was kept while the host was away: it is not the newest value.</param>
/// <param name="Raw">Its value as it was sent, whole numbers without sign; null for none.</param>
public sealed record SparkplugMetric(
    string Name, long? Alias, DateTimeOffset? At, int DataType, bool IsHistorical, object? Raw)
{
    // The numbers of data types (Sparkplug 3.0, 6.4.16).
    private const int Int8 = 1;
    private const int Int16 = 2;
    private const int Int32 = 3;
    private const int Int64 = 4;

    /// <summary>Its value as JSON has it; null where it has none that JSON could hold.</summary>
    /// <param name="dataType">Its data type, from here or from its birth: it says whether a number has a sign.</param>
    public JsonElement? Value(int dataType) => Raw switch
    {
        ulong number => Json(dataType switch
        {
            Int8 => unchecked((sbyte)number),
            Int16 => unchecked((short)number),
            Int32 => unchecked((int)number),
            Int64 => unchecked((long)number),
            _ => number,
        }),
        double number => double.IsFinite(number) ? Json(number) : null,
        { } value => Json(value),
        null => null,
    };

    private static JsonElement Json(object value) => JsonSerializer.SerializeToElement(value);
}
