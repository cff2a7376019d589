namespace WearWatch.Wear;

/// <summary>A reading with the rest of the run-in added, so that it lies on the steady line from the first hour on.</summary>
/// <remarks>
/// <c>z = G(y + A x)</c>, <c>x = exp(-h/T_r)</c>;
/// <c>R = J^2 ((kappa sd)^2 + (loc y)^2 + (s_A x)^2 + (0.4 A (h/T_r) x)^2)</c>: gauge, place on the chain, how much run-in a
/// chain has, and how fast. Run-in readings are so used for what they are worth and not dropped.
/// </remarks>
/// <param name="Percent">z in percent of the wear clock.</param>
/// <param name="Variance">R in percent squared.</param>
/// <param name="LogJacobian">ln J, which makes the evidence of different clocks comparable.</param>
public readonly record struct SteadyReading(double Percent, double Variance, double LogJacobian)
{
    /// <summary>Share of the run-in's duration that varies from chain to chain.</summary>
    private const double RunInHoursSpread = 0.4;

    /// <summary>The elongation of an observation with the rest of the run-in added, in percent.</summary>
    public static double PercentOf(in Observation observation, WearConstants constants) =>
        observation.ElongationPercent + constants.RunInPercent * Math.Exp(-observation.HoursSinceFitting / constants.RunInHours);

    /// <summary>The steady reading of an observation.</summary>
    public static SteadyReading Of(in Observation observation, in WearClock clock, WearConstants constants)
    {
        var turns = observation.HoursSinceFitting / constants.RunInHours;
        var left = Math.Exp(-turns);
        var steady = PercentOf(observation, constants);
        var logJacobian = clock.LogSlope(steady);
        var gauge = constants.ScatterFactor * observation.ScatterPercent;
        var place = constants.PlaceScatter * observation.ElongationPercent;
        var amount = constants.RunInDeviationPercent * left;
        var duration = RunInHoursSpread * constants.RunInPercent * turns * left;
        return new(
            clock.FromElongation(steady),
            Math.Exp(2 * logJacobian) * (gauge * gauge + place * place + amount * amount + duration * duration),
            logJacobian);
    }
}
