namespace WearWatch.Dashboard.Kit.Charts;

/// <summary>A picture's size and the room that its labels need around the drawing, in pixels.</summary>
/// <param name="Width">Of the whole picture.</param>
/// <param name="Height">Of the whole picture.</param>
/// <param name="FontSize">Of its labels.</param>
/// <param name="LabelWidth">Room for the labels on the left, in letters.</param>
public sealed record ChartFrame(double Width, double Height, double FontSize = 12.5, double LabelWidth = 6)
{
    /// <summary>No wider than drawn, so that the labels of all charts have one size on a desk.</summary>
    public string Style => FormattableString.Invariant($"max-width:{Width}px");

    public double Left => LabelWidth * 0.62 * FontSize;

    public double Right => Width - 1.8 * FontSize;

    public double Top => 1.6 * FontSize;

    public double Bottom => Height - 3.2 * FontSize;
}
