namespace WearWatch.Storage.Series.Boards;

/// <summary>How a picture of a board is drawn.</summary>
public enum PanelStyle
{
    /// <summary>A line through the points.</summary>
    Lines,

    /// <summary>Points alone: what lies between two is not known.</summary>
    Points,

    /// <summary>A line that stays where it is until the next point.</summary>
    Steps,

    /// <summary>A bar for each stretch of time.</summary>
    Bars,
}
