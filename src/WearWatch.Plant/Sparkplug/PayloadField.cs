namespace WearWatch.Plant.Sparkplug;

/// <summary>
/// The numbers of fields in a payload (Sparkplug 3.0, 6.4.1, from memory; held against payloads of an independent library).
/// </summary>
internal static class PayloadField
{
    public const int Time = 1;
    public const int Metrics = 2;
    public const int Seq = 3;

    public const int MetricName = 1;
    public const int Alias = 2;
    public const int MetricTime = 3;
    public const int DataType = 4;
    public const int IsHistorical = 5;
    public const int IsNull = 7;
    public const int Int = 10;
    public const int Long = 11;
    public const int Float = 12;
    public const int Double = 13;
    public const int Boolean = 14;
    public const int String = 15;
}
