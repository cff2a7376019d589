namespace WearWatch.Plant.Sending;

/// <summary>How long to wait before something is sent again: each time twice as long.</summary>
/// <param name="First">After the first failure.</param>
/// <param name="Longest">Never longer.</param>
public sealed record Backoff(TimeSpan First, TimeSpan Longest)
{
    private const double Spread = 0.2;

    /// <summary>The pause after a failure.</summary>
    /// <param name="before">How many in a row failed before it.</param>
    public TimeSpan After(int before)
    {
        var pause = First * Math.Pow(2, Math.Min(before, 20));
        return pause < Longest ? pause : Longest;
    }

    /// <summary>The pause, up to a fifth shorter or longer, so that what failed together does not come again together.</summary>
    /// <param name="before">How many in a row failed before it.</param>
    /// <param name="seed">What tells this one from the others.</param>
    public TimeSpan After(int before, long seed) =>
        After(before) * (1 - Spread + 2 * Spread * new Random(unchecked((int)seed * 397) ^ before).NextDouble());
}
