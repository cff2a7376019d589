namespace WearWatch.Gauging;

/// <summary>The length of the same pitches when the chain was new: what elongation is then measured against.</summary>
/// <param name="LengthMm">The length in millimetres at 20 degrees; above zero.</param>
/// <param name="Instrument">With what it was measured.</param>
/// <param name="SameTool">Whether the very same tool is used now: its own fixed error then drops out of the difference.</param>
public sealed record NewLength(double LengthMm, Instrument Instrument, bool SameTool = false);
