namespace WearWatch.Trends;

/// <summary>A sum of products that keeps what rounding cuts off: as good as if done in twice the precision and rounded once.</summary>
/// <remarks>
/// The error of a product comes exact from a fused multiply-add, that of a sum from Knuth's two-sum. Source: T. Ogita, S. M. Rump,
/// S. Oishi, SIAM J. Sci. Comput. 26 (2005) 1955 (from memory).
/// </remarks>
internal struct CompensatedSum
{
    private double high;
    private double low;

    /// <summary>The sum so far.</summary>
    public readonly double Value => high + low;

    /// <summary>Adds a product.</summary>
    public void Add(double a, double b)
    {
        var product = a * b;
        low += Math.FusedMultiplyAdd(a, b, -product);
        Add(product);
    }

    /// <summary>Adds a number.</summary>
    public void Add(double value)
    {
        var sum = high + value;
        var part = sum - high;
        low += (high - (sum - part)) + (value - part);
        high = sum;
    }
}
