namespace WearWatch.Wear;

/// <summary>
/// The scale on which the chains of a plant wear evenly, as they themselves have shown it: how long they take for each step of
/// elongation.
/// </summary>
/// <remarks>
/// A line from step to step, going on beyond the first and the last with their slopes; so it always rises. Zero stays zero.
/// <see cref="CurveLearning"/> finds it.
/// </remarks>
/// <param name="FromPercent">Elongation at which the first step begins.</param>
/// <param name="StepPercent">How long a step is, in percent.</param>
/// <param name="Slopes">What a percent of elongation is on the scale, step by step; above zero.</param>
public sealed record WearCurve(double FromPercent, double StepPercent, IReadOnlyList<double> Slopes)
{
    /// <summary>Where a new chain's steady wear starts on the scale.</summary>
    public double Start { get; init; }

    /// <summary>Standard deviation of <see cref="Start"/> from chain to chain; above zero.</summary>
    public double StartDeviation { get; init; } = 0.1;

    /// <summary>Probability of this scale against all others before anything is measured, 0 to 1.</summary>
    public double Weight { get; init; }

    /// <summary>From how many chains.</summary>
    public int Chains { get; init; }

    /// <summary>What is believed on this scale of a chain before its first reading.</summary>
    /// <param name="belief">What is believed in percent.</param>
    /// <param name="prior">The prior that it comes from: its rate is that of the scale, which was made so.</param>
    /// <param name="atFitting">Whether the chain is new then.</param>
    public Belief Believed(in Belief belief, WearPrior prior, bool atFitting) => belief with
    {
        LogRate = prior.MeanLogRate,
        Wear = atFitting ? Start : FromElongation(belief.Wear),
        WearVariance = atFitting ? StartDeviation * StartDeviation : belief.WearVariance * Math.Pow(SlopeAt(belief.Wear), 2),
    };

    /// <summary>From elongation to the scale.</summary>
    public double FromElongation(double percent)
    {
        if (percent <= FromPercent) return Slopes[0] * percent;
        var at = Slopes[0] * FromPercent;
        var step = 0;
        for (; step < Slopes.Count - 1 && percent > FromPercent + (step + 1) * StepPercent; step++)
            at += StepPercent * Slopes[step];
        return at + (percent - FromPercent - step * StepPercent) * Slopes[step];
    }

    /// <summary>From the scale to elongation.</summary>
    public double ToElongation(double clock)
    {
        var at = Slopes[0] * FromPercent;
        if (clock <= at) return clock / Slopes[0];
        var step = 0;
        for (; step < Slopes.Count - 1 && clock > at + StepPercent * Slopes[step]; step++) at += StepPercent * Slopes[step];
        return FromPercent + step * StepPercent + (clock - at) / Slopes[step];
    }

    /// <summary>The slope of the scale at an elongation.</summary>
    public double SlopeAt(double percent) =>
        Slopes[Math.Clamp((int)Math.Floor((percent - FromPercent) / StepPercent), 0, Slopes.Count - 1)];

    /// <inheritdoc/>
    public bool Equals(WearCurve? other) => other is not null
        && (FromPercent, StepPercent, Start, StartDeviation, Weight, Chains)
            == (other.FromPercent, other.StepPercent, other.Start, other.StartDeviation, other.Weight, other.Chains)
        && Slopes.SequenceEqual(other.Slopes);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(FromPercent, StepPercent, Start, Slopes.Count, Slopes[0]);
}
