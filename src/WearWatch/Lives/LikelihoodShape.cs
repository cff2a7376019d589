namespace WearWatch.Lives;

/// <summary>A log-likelihood at one line, with its gradient and curvature in the line's steepness a and height b.</summary>
internal record struct LikelihoodShape(double Value, double Ga, double Gb, double Haa, double Hab, double Hbb)
{
    /// <summary>Adds what so many lives at <c>x = ln t</c> contribute.</summary>
    internal void Add(double x, int count, (double Value, double Slope, double Curvature) term)
    {
        var (slope, curvature) = (count * term.Slope, count * term.Curvature);
        Value += count * term.Value;
        Ga += slope * x;
        Gb += slope;
        Haa += curvature * x * x;
        Hab += curvature * x;
        Hbb += curvature;
    }
}
