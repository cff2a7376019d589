namespace WearWatch.Wear;

/// <summary>What was forecast at one reading, told in the running hours of the chain at which the limit is reached.</summary>
/// <param name="Observation">The reading.</param>
/// <param name="EarlyAtHours">Nineteen of twenty such chains reach the limit later; null when not in sight.</param>
/// <param name="MiddleAtHours">Half of such chains reach it later; null when not in sight.</param>
/// <param name="LateAtHours">One of twenty such chains reaches it later; null for no upper limit yet.</param>
public sealed record ForecastStep(Observation Observation, double? EarlyAtHours, double? MiddleAtHours, double? LateAtHours);
