namespace WearWatch.Wear;

/// <summary>
/// One step of the wear filter: from the belief at one time, over running hours, to the belief after a reading.
/// </summary>
/// <remarks>
/// Wear grows by <c>D exp(rho)</c>, not linearly in what is sought, and a prior on the rate within a factor of two is too wide
/// for an extended Kalman step: the first reading would teach it too little. The most likely rate is therefore found by a
/// Newton search in the one dimension that is curved, and the belief is the normal one about that point (Laplace).
/// </remarks>
/// <param name="Innovation">nu: reading less expectation, in percent.</param>
/// <param name="InnovationVariance">Variance of the innovation: the standardised innovation feeds control charts.</param>
/// <param name="LogEvidence">ln of the probability density of the reading under the belief.</param>
/// <param name="After">The belief after the reading.</param>
public readonly record struct WearStep(double Innovation, double InnovationVariance, double LogEvidence, Belief After)
{
    private const double LogTwoPi = 1.8378770664093453;
    private const int MostSteps = 25;
    private const double StepBound = 0.7;
    private const double StepEnough = 1e-9;

    /// <summary>Makes the step.</summary>
    /// <param name="before">The belief at the time before.</param>
    /// <param name="thousandHours">D: running hours since, in thousands; not negative.</param>
    /// <param name="reading">What is read now.</param>
    /// <param name="constants">The constants of wear.</param>
    public static WearStep Over(in Belief before, double thousandHours, in SteadyReading reading, WearConstants constants) =>
        thousandHours > 0 ? Curved(before, thousandHours, reading, constants) : AtOnce(before, reading);

    /// <summary>The belief brought forward over running hours without a reading.</summary>
    public static Belief Forward(in Belief before, double thousandHours, WearConstants constants)
    {
        if (!(thousandHours > 0)) return before;
        var (c, a) = Spread(before, thousandHours, constants);
        var gain = thousandHours * Math.Exp(before.LogRate + c / 2);
        return before with
        {
            Wear = before.Wear + gain,
            WearVariance = a + 2 * before.Covariance * gain + (Math.Exp(Math.Min(c, 5)) - 1) * gain * gain,
            Covariance = before.Covariance + c * gain,
            LogRateVariance = c,
        };
    }

    /// <summary><c>c = P_rr + q D</c> and <c>a = P_ll + eta D exp(2 m_r + min(c, 2))</c>.</summary>
    private static (double LogRateVariance, double WearVariance) Spread(
        in Belief before, double thousandHours, WearConstants constants)
    {
        var c = before.LogRateVariance + constants.RateDrift * thousandHours;
        return (c, before.WearVariance + constants.UnevenWear * thousandHours * Math.Exp(2 * before.LogRate + Math.Min(c, 2)));
    }

    private static WearStep Curved(in Belief before, double thousandHours, in SteadyReading reading, WearConstants constants)
    {
        var (c, a) = Spread(before, thousandHours, constants);
        double b = before.Covariance, k = b / c, v = Math.Max(a - b * b / c, 1e-10), s = v + reading.Variance;
        var rho = before.LogRate;
        var (mean, d, h) = At(rho, before, thousandHours, k, c, s);
        for (var i = 0; i < MostSteps; i++)
        {
            var pull = (rho - before.LogRate) / c - d * (reading.Percent - mean) / s;
            var step = Math.Clamp(pull / h, -StepBound, StepBound);
            rho -= step;
            (mean, d, h) = At(rho, before, thousandHours, k, c, s);
            if (Math.Abs(step) < StepEnough) break;
        }

        var miss = reading.Percent - mean;
        var share = reading.Variance / s;
        var after = new Belief(
            mean + v / s * miss, rho, v * share + d * share * (d * share) / h, d * share / h, 1 / h);

        var gain = thousandHours * Math.Exp(before.LogRate + c / 2);
        return new(
            reading.Percent - (before.Wear + gain),
            a + 2 * b * gain + (Math.Exp(Math.Min(c, 5)) - 1) * gain * gain + reading.Variance,
            -0.5 * (LogTwoPi + Math.Log(s) + miss * miss / s + (rho - before.LogRate) * (rho - before.LogRate) / c
                + Math.Log(c * h)),
            after);
    }

    /// <summary>
    /// At one ln(rate): the wear expected, its slope <c>d = k + D exp(rho)</c>, and the curvature <c>H = 1/c + d^2/S</c>.
    /// </summary>
    private static (double Wear, double Slope, double Curvature) At(
        double rho, in Belief before, double thousandHours, double k, double c, double s)
    {
        var gain = thousandHours * Math.Exp(rho);
        var slope = k + gain;
        return (before.Wear + k * (rho - before.LogRate) + gain, slope, 1 / c + slope * slope / s);
    }

    private static WearStep AtOnce(in Belief before, in SteadyReading reading)
    {
        var s = before.WearVariance + reading.Variance;
        var miss = reading.Percent - before.Wear;
        double gainWear = before.WearVariance / s, gainRate = before.Covariance / s;
        var after = new Belief(
            before.Wear + gainWear * miss,
            before.LogRate + gainRate * miss,
            before.WearVariance - gainWear * before.WearVariance,
            before.Covariance - gainWear * before.Covariance,
            before.LogRateVariance - gainRate * before.Covariance);
        return new(miss, s, -0.5 * (LogTwoPi + Math.Log(s) + miss * miss / s), after);
    }
}
