using System.Text;

namespace WearWatch.SensorSim.Randomness;

/// <summary>A stream of chance that gives the same numbers for ever, whatever the runtime does with its own generator.</summary>
/// <remarks>
/// SplitMix64 (Steele, Lea, Flood, OOPSLA 2014; constants from memory). A stream is named by a seed and words, so that what is
/// drawn for one chain never depends on how much was drawn for another.
/// </remarks>
internal sealed class Chance
{
    private ulong state;

    private Chance(ulong state) => this.state = state;

    /// <summary>The bare generator from a state, for comparison with others' implementations.</summary>
    public static Chance FromState(ulong state) => new(state);

    /// <summary>The stream of these words, always from its beginning.</summary>
    public static Chance For(int seed, params ReadOnlySpan<string> words)
    {
        // FNV-1a over the words, with a separator so that ("ab", "c") and ("a", "bc") are two streams.
        var hash = 14695981039346656037UL;
        foreach (var word in words)
        {
            foreach (var letter in Encoding.UTF8.GetBytes(word)) hash = unchecked((hash ^ letter) * 1099511628211UL);
            hash = unchecked((hash ^ 0x1F) * 1099511628211UL);
        }

        return new Chance(unchecked(hash ^ ((ulong)(uint)seed * 0xD1342543DE82EF95UL)));
    }

    /// <summary>The next 64 bits.</summary>
    public ulong Bits()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15UL;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }

    /// <summary>Even between 0 (possible) and 1 (not possible).</summary>
    public double Share() => (Bits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Even between two numbers.</summary>
    public double Between(double low, double high) => low + (high - low) * Share();

    /// <summary>Even among whole numbers, both ends possible.</summary>
    public int Whole(int low, int high) => low + (int)(Share() * (high - low + 1));

    /// <summary>Whether something of this probability happens.</summary>
    public bool Happens(double probability) => Share() < probability;

    /// <summary>Normally distributed (Box and Muller 1958; half of the pair is left, so that a draw has no memory).</summary>
    public double Normal(double mean, double standardDeviation)
    {
        var radius = Math.Sqrt(-2 * Math.Log(1 - Share()));
        return mean + standardDeviation * radius * Math.Cos(2 * Math.PI * Share());
    }

    /// <summary>Normally distributed and cut at both ends.</summary>
    public double Normal(double mean, double standardDeviation, double low, double high) =>
        Math.Clamp(Normal(mean, standardDeviation), low, high);

    /// <summary>One of several, all alike.</summary>
    public T OneOf<T>(IReadOnlyList<T> several) => several[Whole(0, several.Count - 1)];

    /// <summary>The same things in another order (Fisher and Yates).</summary>
    public T[] Shuffled<T>(IEnumerable<T> things)
    {
        T[] deck = [.. things];
        for (var last = deck.Length - 1; last > 0; last--)
        {
            var other = Whole(0, last);
            (deck[last], deck[other]) = (deck[other], deck[last]);
        }

        return deck;
    }
}
