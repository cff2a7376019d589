namespace WearWatch.SensorSim.Plant;

/// <summary>What a chain of the mill has to stand.</summary>
/// <param name="LoadRel">Bearing pressure in the joint over the permissible one.</param>
/// <param name="SpeedMetresPerSecond">Chain speed.</param>
/// <param name="Lubrication">How it gets its oil.</param>
/// <param name="Dust">How much dust reaches it.</param>
internal sealed record MillDuty(double LoadRel, double SpeedMetresPerSecond, Lubrication Lubrication, Dust Dust);
