namespace WearWatch.Benchmarks.Worlds;

/// <summary>Chance by a seed.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random random = new(seed);

    /// <summary>A share, from 0 to below 1.</summary>
    public double Share() => random.NextDouble();

    /// <summary>Evenly between two values.</summary>
    public double Between(double low, double high) => low + (high - low) * random.NextDouble();

    /// <summary>One of so many, from 0.</summary>
    public int OneOf(int many) => random.Next(many);

    /// <summary>A standard normal draw.</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>A lognormal draw about a median.</summary>
    public double About(double median, double logDeviation) => median * Math.Exp(logDeviation * Normal());

    /// <summary>Hours to the next event of a kind that comes once in so many hours on average.</summary>
    public double Wait(double meanHours) => -meanHours * Math.Log(1 - random.NextDouble());
}
