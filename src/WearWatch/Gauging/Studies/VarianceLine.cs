namespace WearWatch.Gauging.Studies;

/// <summary>One line of a table of the analysis of variance.</summary>
/// <param name="SumOfSquares">Sum of squares.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom.</param>
public readonly record struct VarianceLine(double SumOfSquares, int DegreesOfFreedom)
{
    /// <summary>Mean square: sum of squares over degrees of freedom.</summary>
    public double MeanSquare => SumOfSquares / DegreesOfFreedom;

    /// <summary>Both lines taken together.</summary>
    public VarianceLine Pooled(VarianceLine other) =>
        new(SumOfSquares + other.SumOfSquares, DegreesOfFreedom + other.DegreesOfFreedom);
}
