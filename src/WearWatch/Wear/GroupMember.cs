namespace WearWatch.Wear;

/// <summary>A chain of a group that runs together, as it is now.</summary>
/// <param name="Name">The chain.</param>
/// <param name="ElongationPercent">Its elongation now, in percent.</param>
/// <param name="StandardDeviationPercent">Standard deviation of it, in percent.</param>
/// <param name="RatePercentPer1000Hours">Its wear rate, in percent per 1,000 running hours.</param>
/// <param name="LengthMm">Nominal length of the whole chain in millimetres; null where that is not known.</param>
public sealed record GroupMember(
    string Name, double ElongationPercent, double StandardDeviationPercent, double RatePercentPer1000Hours, double? LengthMm);
