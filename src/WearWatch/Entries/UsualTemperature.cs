using WearWatch.Gauging;
using WearWatch.Phrases;

namespace WearWatch.Entries;

/// <summary>Whether the temperature of a chain is one that it can have had, by what was told of it before.</summary>
/// <remarks>A tenfold temperature lengthens steel by a third of a percent: it moves a swap, unseen by the gauge.</remarks>
public static class UsualTemperature
{
    /// <summary>Chains differ by season and shift. Common practice.</summary>
    private const double MostOffK = 35;

    /// <summary>Where none was told before, one of a hot place is asked about once.</summary>
    private const double MostOffRoomK = 60;
    private const double RoomC = 20;
    private const int ReadingsThatTell = 12;

    /// <summary>What does not fit, in plain words; empty when it fits or none was told.</summary>
    /// <param name="before">The chain's readings before.</param>
    /// <param name="entry">The entry.</param>
    public static Phrase WhatIsOff(IReadOnlyList<Reading> before, Reading entry)
    {
        if (entry.TemperatureC is not { } told) return Phrase.None;
        double[] known = [.. before.Select(r => r.TemperatureC).OfType<double>().TakeLast(ReadingsThatTell).Order()];
        var usual = known.Length == 0 ? RoomC : known[known.Length / 2];
        return Math.Abs(told - usual) <= (known.Length == 0 ? MostOffRoomK : MostOffK) ? Phrase.None
            : known.Length == 0 ? Phrase.Of($"A chain of {told:0.#} °C is a hot one. Please read its temperature again.")
            : $"This temperature does not fit: {told:0.#} °C, and about {usual:0} °C is usual. Please read it again.";
    }
}
