using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace WearWatch.Lives;

/// <summary>
/// A law of lives under which <c>z = a ln t + b</c> has one fixed distribution, so that lives lie on a line on its paper.
/// </summary>
public abstract class LifeLaw
{
    private LifeLaw()
    {
    }

    /// <summary>The Weibull law: z has the smallest extreme value distribution; a is the shape.</summary>
    public static LifeLaw Weibull { get; } = new SmallestExtremeValue();

    /// <summary>The lognormal law: z is standard normal; 1/a is the standard deviation of ln t.</summary>
    public static LifeLaw Lognormal { get; } = new StandardNormal();

    /// <summary>What it is called on a screen.</summary>
    public abstract string Name { get; }

    /// <summary>Height on its probability paper of a share failed, 0 to 1 exclusive.</summary>
    public abstract double Height(double shareFailed);

    /// <summary>The share failed at a height on its probability paper.</summary>
    public abstract double ShareFailed(double height);

    /// <summary>Log-likelihood of a failure at z, without ln(a/t), with its first and second derivative.</summary>
    internal abstract (double Value, double Slope, double Curvature) Failure(double z);

    /// <summary>Log-likelihood of a suspension at z, with its first and second derivative.</summary>
    internal abstract (double Value, double Slope, double Curvature) Suspension(double z);

    private sealed class SmallestExtremeValue : LifeLaw
    {
        public override string Name => "Weibull";

        public override double Height(double shareFailed) => Math.Log(-SpecialFunctions.Log1p(-shareFailed));

        public override double ShareFailed(double height) => -SpecialFunctions.Expm1(-Math.Exp(height));

        internal override (double Value, double Slope, double Curvature) Failure(double z)
        {
            var hazard = Math.Exp(z);
            return (z - hazard, 1 - hazard, -hazard);
        }

        internal override (double Value, double Slope, double Curvature) Suspension(double z)
        {
            var hazard = -Math.Exp(z);
            return (hazard, hazard, hazard);
        }
    }

    private sealed class StandardNormal : LifeLaw
    {
        private const double HalfLogTwoPi = 0.91893853320467274;

        // Beyond it erfc loses digits in the end to underflow; the asymptotic series is good to 1e-9 there.
        private const double FarOut = 30;

        public override string Name => "Lognormal";

        public override double Height(double shareFailed) => Normal.InvCDF(0, 1, shareFailed);

        public override double ShareFailed(double height) => Normal.CDF(0, 1, height);

        internal override (double Value, double Slope, double Curvature) Failure(double z) => (-z * z / 2 - HalfLogTwoPi, -z, -1);

        internal override (double Value, double Slope, double Curvature) Suspension(double z)
        {
            var logSurviving = z < FarOut
                ? Math.Log(SpecialFunctions.Erfc(z / Math.Sqrt(2)) / 2)
                : -z * z / 2 - HalfLogTwoPi - Math.Log(z) + SpecialFunctions.Log1p(-1 / (z * z) + 3 / Math.Pow(z, 4));
            var hazard = Math.Exp(-z * z / 2 - HalfLogTwoPi - logSurviving);
            return (logSurviving, -hazard, -hazard * (hazard - z));
        }
    }
}
