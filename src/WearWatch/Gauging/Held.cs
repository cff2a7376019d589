using System.Globalization;
using WearWatch.Phrases;

namespace WearWatch.Gauging;

/// <summary>How a chain was held while its length was measured, so that its joints lay against each other.</summary>
/// <remarks>
/// The standards pull with about 1 % of the smallest tensile strength (see <see cref="Chains.MeasuringLoad"/>); in place and taut
/// the error is small over 20 to 40 links, docs/references.md [10]. The default says that nobody told.
/// </remarks>
public readonly record struct Held
{
    /// <summary>More than this no chain is pulled with to be measured: 1 % of the strongest is far less.</summary>
    public const double MostNewtons = 1e6;

    private Held(bool taut, double? loadNewtons) => (InPlaceTaut, LoadNewtons) = (taut, loadNewtons);

    /// <summary>In its place on the drive, with the measured span taut.</summary>
    public static Held Taut { get; } = new(true, null);

    /// <summary>Whether it hung in its place, taut.</summary>
    public bool InPlaceTaut { get; }

    /// <summary>The pull in newtons; null when it was not under a measuring load, or nobody told.</summary>
    public double? LoadNewtons { get; }

    /// <summary>Under a measuring load.</summary>
    /// <param name="newtons">The pull, above zero and at most <see cref="MostNewtons"/>.</param>
    public static Held Under(double newtons) => newtons is > 0 and <= MostNewtons
        ? new(false, newtons)
        : throw new ArgumentOutOfRangeException(
            nameof(newtons), newtons, "A measuring load lies above 0 and at most at 1,000,000 N.");

    /// <summary>From the two fields in which it is kept and sent; a load wins, since it says more.</summary>
    public static Held From(bool taut, double? loadNewtons) => loadNewtons is { } n ? Under(n) : taut ? Taut : default;

    /// <summary>In words that never change: fingerprints of readings rest on them.</summary>
    public override string ToString() =>
        LoadNewtons is { } n ? string.Create(CultureInfo.InvariantCulture, $"under {n:#,0.#} N")
        : InPlaceTaut ? "in place, taut" : "not recorded";

    /// <summary>In words, for people.</summary>
    public Phrase Words =>
        LoadNewtons is { } n ? Phrase.Of($"under {n:#,0.#} N")
        : InPlaceTaut ? Phrase.Of($"in place, taut") : $"not recorded";
}
