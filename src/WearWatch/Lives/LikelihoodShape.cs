namespace WearWatch.Lives;

/// <summary>A log-likelihood at one line, with its gradient and curvature in the line's steepness a and height b.</summary>
internal record struct LikelihoodShape(double Value, double Ga, double Gb, double Haa, double Hab, double Hbb)
{
    /// <summary>Adds what one life at <c>x = ln t</c> contributes.</summary>
    internal void Add(double x, (double Value, double Slope, double Curvature) term)
    {
        Value += term.Value;
        Ga += term.Slope * x;
        Gb += term.Slope;
        Haa += term.Curvature * x * x;
        Hab += term.Curvature * x;
        Hbb += term.Curvature;
    }
}
