namespace WearWatch.SensorSim.Wear;

/// <summary>How one particular chain wears, apart from its rate.</summary>
/// <param name="NewPercent">Elongation when new; ISO 606 allows 0 to 0.15 % (from memory).</param>
/// <param name="RunInPercent">What the joints bed in over the first hours, in percent.</param>
/// <param name="RunInHours">Time constant of it.</param>
/// <param name="AccelerationFromPercent">Elongation at which the hard case is worn through and wear speeds up.</param>
/// <param name="AccelerationPerPercent">How steeply: the rate grows e-fold over the inverse of this, in 1/percent.</param>
internal sealed record MillWear(
    double NewPercent, double RunInPercent, double RunInHours, double AccelerationFromPercent, double AccelerationPerPercent);
