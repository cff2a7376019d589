namespace WearWatch.Learning;

/// <summary>The samples with their rows of a design, made once for the many rounds of a fit.</summary>
internal sealed class DesignedFleet
{
    private readonly bool[] tellsAll;

    public DesignedFleet(IReadOnlyList<RateSample> samples, DutyDesign design)
    {
        (Samples, Design) = (samples, design);
        Rows = [.. samples.Select(s => design.Row(s.Card))];
        tellsAll = [.. samples.Select(s => design.Inputs.All(input => input.IsToldBy(s.Card)))];
    }

    public IReadOnlyList<RateSample> Samples { get; }

    public DutyDesign Design { get; }

    public IReadOnlyList<double[]> Rows { get; }

    /// <summary>Variance of a sample's ln rate that has a known cause: its own error, and what its card leaves open.</summary>
    public double KnownVariance(int sample, IReadOnlyList<double> coefficients)
    {
        var own = Samples[sample].StandardError;
        return own * own + (tellsAll[sample] ? 0 : Design.VarianceOfUntold(Samples[sample].Card, coefficients));
    }
}
