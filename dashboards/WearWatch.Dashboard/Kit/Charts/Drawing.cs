namespace WearWatch.Dashboard.Kit.Charts;

/// <summary>A picture as what is drawn in it, so that a page and paper show the same.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Said">Its figures in words, for those who do not see it.</param>
/// <param name="Frame">Its size and the room for labels.</param>
/// <param name="Marks">What is drawn, from back to front.</param>
public sealed record Drawing(string Title, string Said, ChartFrame Frame, IReadOnlyList<DrawnMark> Marks);

/// <summary>With what a mark is drawn.</summary>
public enum Ink
{
    /// <summary>Lines to read values by.</summary>
    Grid,

    /// <summary>The edge of the drawing.</summary>
    Axis,

    /// <summary>What the picture is about.</summary>
    Main,

    /// <summary>What stands apart from it, by shape as well.</summary>
    Apart,

    /// <summary>What was to be expected; dashed.</summary>
    Stated,
}

/// <summary>One mark of a picture; all places in its pixels.</summary>
public abstract record DrawnMark
{
    private DrawnMark()
    {
    }

    /// <summary>A full rectangle, with what it says when it is pointed at.</summary>
    public sealed record Bar(double X, double Y, double Width, double Height, Ink Ink, string Said) : DrawnMark;

    /// <summary>A straight line.</summary>
    public sealed record Stroke(double X1, double Y1, double X2, double Y2, Ink Ink) : DrawnMark;

    /// <summary>A point, with what it says when it is pointed at: a circle, or a square for what stands apart.</summary>
    public sealed record Point(double X, double Y, Ink Ink, string Said) : DrawnMark
    {
        /// <summary>Half of its width.</summary>
        public const double Radius = 4.5;
    }

    /// <summary>Words on the line of a place.</summary>
    public sealed record Label(double X, double Y, string Text, LabelSide Side = LabelSide.Right) : DrawnMark;
}

/// <summary>On which side of its place a label stands.</summary>
public enum LabelSide
{
    /// <summary>It begins there.</summary>
    Right,

    /// <summary>It is centred there.</summary>
    Middle,

    /// <summary>It ends there.</summary>
    Left,
}
