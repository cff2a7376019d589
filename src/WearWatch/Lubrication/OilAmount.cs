using WearWatch.Chains;
using WearWatch.Phrases;

namespace WearWatch.Lubrication;

/// <summary>How much oil a way of feeding takes.</summary>
/// <param name="Parts">How much, in words with units: what a list has room for first, then the rest.</param>
/// <param name="Source">Who says so.</param>
/// <param name="IsVerified">Whether its source was read.</param>
public sealed record OilAmount(IReadOnlyList<Phrase> Parts, string Source, bool IsVerified)
{
    /// <summary>All of it.</summary>
    public Phrase Text => Phrase.Join("; ", Parts);

    /// <summary>As much as a list has room for.</summary>
    public Phrase Brief => Parts[0];

    /// <summary>Drops a minute for each strand, least and most. Printed elsewhere also as 4 to 20 and as 5 to 50.</summary>
    public static (int Least, int Most) DropsPerMinute => (5, 20);

    /// <summary>How deep the chain dips into a bath, in millimetres, least and most.</summary>
    public static (int Least, int Most) BathDepthMm => (6, 12);

    /// <summary>Oil stream in litres a minute for each kilowatt. From memory: about hp/200 US gallons a minute.</summary>
    public const double StreamLitresPerMinuteAndKilowatt = 0.025;

    /// <summary>
    /// Of a chain that lifts or holds a load: no drips on a slack side, but into each joint while nothing hangs from it.
    /// </summary>
    public static OilAmount OfLifting { get; } = new(
        [
            $"by hand or brush into each joint while the chain is slack and nothing hangs from it",
            $"oil outside is not enough. No grease, no oil on a brake, no steam, acid or caustic",
        ],
        "docs/references.md [65], [71], [75]", true);

    /// <summary>The amount for a way of feeding.</summary>
    /// <param name="kind">The way.</param>
    /// <param name="strands">Strands of the chain.</param>
    public static OilAmount For(OilFeedKind kind, int strands) => kind switch
    {
        OilFeedKind.ManualOrDrip => new(
            [
                strands > 1
                    ? Phrase.Of($"drip {strands * DropsPerMinute.Least} to {strands * DropsPerMinute.Most} drops a minute "
                        + $"over {strands} strands")
                    : $"drip {DropsPerMinute.Least} to {DropsPerMinute.Most} drops a minute",
                $"by hand until oil stands between the plates, on the inside of the slack side",
            ],
            "docs/references.md [11], [36]", true),
        OilFeedKind.BathOrDisc => new(
            [
                $"bath: the lowest pitch dips {BathDepthMm.Least} to {BathDepthMm.Most} mm",
                $"disc: rim at 200 m/min or faster, 12 to 25 mm clear of the chain",
            ],
            "docs/references.md [5]", true),
        _ => new(
            [$"about {StreamLitresPerMinuteAndKilowatt} litres a minute for each kW that the chain carries"],
            Sourced.Memory, false),
    };
}
