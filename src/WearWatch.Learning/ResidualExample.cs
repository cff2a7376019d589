namespace WearWatch.Learning;

/// <summary>A row of the fleet with what the trees are to learn from it.</summary>
internal sealed class ResidualExample
{
    public double[] Row { get; set; } = [];

    public float Residual { get; set; }

    public float Weight { get; set; }
}
