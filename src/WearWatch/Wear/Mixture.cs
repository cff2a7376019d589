namespace WearWatch.Wear;

/// <summary>
/// The multi-process filter: every reading splits every account of the chain into normal, misread, rate up, rate down.
/// </summary>
/// <remarks>
/// Source: docs/references.md [16]. With <c>p_j = 1 - exp(-lambda D)</c> (none before the first reading):
/// normal <c>ln(1-p_o) + ln(1-p_j) + logev</c>; misread <c>ln p_o + ln N(z; m_l + D exp(m_r + P_rr/2), s_o^2)</c>, the belief and
/// its time kept; up <c>ln(1-p_o) + ln(0.8 p_j) + logev</c> after the jump; down likewise with 0.2.
/// </remarks>
internal static class Mixture
{
    private const double LogTwoPi = 1.8378770664093453;

    /// <summary>The accounts after a reading.</summary>
    /// <param name="before">The accounts before it.</param>
    /// <param name="reading">The reading on the clock of these accounts.</param>
    /// <param name="hours">Running hours since fitting at the reading.</param>
    /// <param name="number">Number of the reading, from 0.</param>
    /// <param name="constants">The constants of wear.</param>
    /// <param name="logEvidence">ln of the probability density of the reading.</param>
    public static Hypothesis[] Weigh(
        ReadOnlySpan<Hypothesis> before, in SteadyReading reading, double hours, int number, WearConstants constants,
        out double logEvidence)
    {
        Span<Hypothesis> split = stackalloc Hypothesis[before.Length * 4];
        var count = 0;
        foreach (ref readonly var account in before)
        {
            count = Split(account, reading, hours, number, constants, split, count);
        }

        split = split[..count];
        logEvidence = Pruning.LogSum(split);
        return Pruning.Keep(split, number, constants.HypothesesKept, logEvidence);
    }

    private static int Split(
        in Hypothesis account, in SteadyReading reading, double hours, int number, WearConstants constants,
        Span<Hypothesis> into, int count)
    {
        var thousandHours = Math.Max(0, (hours - account.Hours) / 1000);
        var jumps = number == 0 ? 0 : 1 - Math.Exp(-constants.JumpsPer1000Hours * thousandHours);
        var read = account.LogWeight + Math.Log(1 - constants.MisreadShare);

        var normal = WearStep.Over(account.Belief, thousandHours, reading, constants);
        into[count++] = account with
        {
            LogWeight = read + Math.Log(1 - jumps) + normal.LogEvidence,
            Belief = normal.After,
            Hours = hours,
            LastMisread = false,
            Doubts = Hindsight.After(account.Doubts, misread: false),
        };
        into[count++] = account with
        {
            LogWeight = account.LogWeight + Math.Log(constants.MisreadShare)
                + LogMisread(account.Belief, thousandHours, reading, constants),
            LastMisread = true,
            Doubts = Hindsight.After(account.Doubts, misread: true),
        };
        if (!(jumps > 0)) return count;

        foreach (var up in (ReadOnlySpan<bool>)[true, false])
        {
            var jumped = account.Belief.AfterJump(up ? constants.JumpUp : constants.JumpDown, constants.JumpDeviation);
            var step = WearStep.Over(jumped, thousandHours, reading, constants);
            var share = up ? constants.ShareUp : 1 - constants.ShareUp;
            into[count++] = new Hypothesis(
                read + Math.Log(share * jumps) + step.LogEvidence, step.After, hours, number, up, LastMisread: false)
            {
                Doubts = Hindsight.After(account.Doubts, misread: false),
            };
        }

        return count;
    }

    private static double LogMisread(in Belief belief, double thousandHours, in SteadyReading reading, WearConstants constants)
    {
        var deviation = constants.MisreadDeviationPercent;
        var miss = (reading.Percent - belief.Wear - thousandHours * Math.Exp(belief.LogRate + belief.LogRateVariance / 2))
            / deviation;
        return -0.5 * (LogTwoPi + miss * miss) - Math.Log(deviation);
    }
}
