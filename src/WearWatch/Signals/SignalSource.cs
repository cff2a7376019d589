namespace WearWatch.Signals;

/// <summary>In which form a foreign machine tells. The numbers are kept in the database: never change one.</summary>
public enum SignalSource
{
    /// <summary>JSON under an MQTT topic.</summary>
    MqttJson = 0,

    /// <summary>A metric of a Sparkplug edge node or of its devices.</summary>
    SparkplugMetric = 1,
}
