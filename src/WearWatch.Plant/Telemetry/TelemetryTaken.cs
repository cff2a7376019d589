namespace WearWatch.Plant.Telemetry;

/// <summary>What became of messages that were taken in together.</summary>
/// <param name="New">Stored now.</param>
/// <param name="Known">Stored before; nothing changed.</param>
/// <param name="SetAside">Kept aside with a reason.</param>
public sealed record TelemetryTaken(int New, int Known, int SetAside);
