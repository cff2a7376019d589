namespace WearWatch.Lives;

/// <summary>The log-likelihood of lives under a law, as a function of the line <c>z = a (ln t - centre) + b</c>.</summary>
/// <remarks>
/// In a and b it is concave for both laws (J. Burridge, J. R. Stat. Soc. B 43 (1981) 41, from memory), so Newton with halved
/// steps reaches the one maximum from anywhere. Logarithms are centred on the failures, which keeps a and b apart. Of more than
/// <see cref="MostTerms"/> lives those within 0.5 % of each other are taken together at their mean: what that leaves out is of
/// second order, at steepness 5 about 3e-5 of a term, and a plant of 10,000 chains is fitted in no time.
/// </remarks>
internal sealed class LifeLikelihood
{
    /// <summary>Up to so many lives each is a term of its own.</summary>
    internal const int MostTerms = 500;

    private const int MostRounds = 200;
    private const double CellWidth = 0.005;

    private readonly LifeLaw law;
    private readonly (double X, int Count)[] failures;
    private readonly (double X, int Count)[] suspensions;
    private readonly int failed;
    private readonly double sumOfLogs;

    internal LifeLikelihood(LifeLaw law, IReadOnlyCollection<Life> lives)
    {
        this.law = law;
        Centre = lives.Where(l => l.Failed).Average(l => Math.Log(l.Hours));
        failures = Terms(lives, failed: true);
        suspensions = Terms(lives, failed: false);
        failed = failures.Sum(f => f.Count);
        sumOfLogs = Centre * failed; // centred on the failures, their logarithms themselves sum to zero
    }

    /// <summary>Mean of ln t over the failures.</summary>
    internal double Centre { get; }

    /// <summary>Value, gradient and curvature at a line.</summary>
    internal LikelihoodShape At(double a, double b)
    {
        var shape = new LikelihoodShape(failed * Math.Log(a) - sumOfLogs, failed / a, 0, -failed / (a * a), 0, 0);
        foreach (var (x, count) in failures) shape.Add(x, count, law.Failure(a * x + b));
        foreach (var (x, count) in suspensions) shape.Add(x, count, law.Suspension(a * x + b));
        return shape;
    }

    /// <summary>The line of greatest log-likelihood.</summary>
    internal (double A, double B, double Value) Maximum()
    {
        var (a, b) = (GentleSteepness(0), 0.0);
        var here = At(a, b);
        for (var round = 0; round < MostRounds; round++)
        {
            var det = here.Haa * here.Hbb - here.Hab * here.Hab;
            var stepA = (here.Hab * here.Gb - here.Hbb * here.Ga) / det;
            var stepB = (here.Hab * here.Ga - here.Haa * here.Gb) / det;
            (var share, here) = Climb(here, a, b, stepA, stepB);
            (a, b) = (a + share * stepA, b + share * stepB);
            if (share == 0 || (Math.Abs(stepA) < 1e-13 * a && Math.Abs(stepB) < 1e-13 * (1 + Math.Abs(b)))) break;
        }

        return (a, b, here.Value);
    }

    /// <summary>The greatest log-likelihood over the lines of steepness a.</summary>
    internal double MaximumAtSteepness(double a) =>
        MaximumAlong(a, -a * failures.Concat(suspensions).Max(term => term.X), directionA: 0, directionB: 1);

    /// <summary>The greatest log-likelihood over the lines through one point: height z at ln t = x.</summary>
    /// <param name="x">Where the lines pass.</param>
    /// <param name="z">At what height.</param>
    /// <param name="near">A steepness that may be near the best one; it saves rounds and changes nothing else.</param>
    internal double MaximumThrough(double x, double z, double near)
    {
        x -= Centre;
        var a = double.IsFinite(At(near, z - near * x).Value) ? near : GentleSteepness(x);
        return MaximumAlong(a, z - a * x, directionA: 1, directionB: -x);
    }

    private double MaximumAlong(double a, double b, double directionA, double directionB)
    {
        var here = At(a, b);
        for (var round = 0; round < MostRounds; round++)
        {
            var slope = directionA * here.Ga + directionB * here.Gb;
            var curvature =
                directionA * directionA * here.Haa + 2 * directionA * directionB * here.Hab + directionB * directionB * here.Hbb;
            var step = -slope / curvature;
            (var share, here) = Climb(here, a, b, step * directionA, step * directionB);
            (a, b) = (a + share * step * directionA, b + share * step * directionB);
            if (share == 0 || slope * step < 1e-10) break; // what is left to climb is about half of slope times step
        }

        return here.Value;
    }

    // The full Newton step if it climbs, else the first of its halves that does; none when only rounding is left.
    private (double Share, LikelihoodShape There) Climb(LikelihoodShape here, double a, double b, double stepA, double stepB)
    {
        for (var share = 1.0; share > 1e-9; share /= 2)
        {
            if (a + share * stepA <= 0) continue;
            var there = At(a + share * stepA, b + share * stepB);
            if (there.Value >= here.Value) return (share, there);
        }

        return (0, here);
    }

    // Flat enough that no life is so far from x on the paper that its exponential overflows.
    private double GentleSteepness(double x) => 1 / failures.Concat(suspensions).Max(term => Math.Abs(term.X - x));

    private (double X, int Count)[] Terms(IReadOnlyCollection<Life> lives, bool failed)
    {
        var logs = lives.Where(l => l.Failed == failed).Select(l => Math.Log(l.Hours) - Centre);
        return lives.Count <= MostTerms
            ? [.. logs.Select(x => (x, 1))]
            : [.. logs.GroupBy(x => Math.Round(x / CellWidth)).Select(cell => (cell.Average(), cell.Count()))];
    }
}
