using WearWatch.Wear;

namespace WearWatch.Lives;

/// <summary>Whether a plant's forecasts hold as often as they say.</summary>
public abstract record SpreadOutcome
{
    private SpreadOutcome()
    {
    }

    /// <summary>Too few lives have ended under a forecast to tell.</summary>
    /// <param name="Have">How many there are.</param>
    /// <param name="Need">How many it takes.</param>
    public sealed record TooFewLives(int Have, int Need) : SpreadOutcome;

    /// <summary>The 90 % intervals hold as often as chance alone lets them.</summary>
    /// <param name="Held">How often they held.</param>
    public sealed record Holds(ObservedShare Held) : SpreadOutcome;

    /// <summary>The 90 % intervals hold too seldom or too often for chance.</summary>
    /// <param name="Held">How often they held.</param>
    /// <param name="Spread">The spread with which they would have held as stated.</param>
    public sealed record Drifted(ObservedShare Held, ForecastSpread Spread) : SpreadOutcome
    {
        /// <summary>Whether the intervals were too narrow rather than too wide.</summary>
        public bool TooNarrow => Held.Fraction < SpreadCalibration.Stated;
    }
}
