namespace WearWatch.Wear;

/// <summary>
/// What later readings say of earlier ones: the odds, account by account, that each of the newest readings was misread.
/// </summary>
/// <remarks>
/// An account keeps them in eight bytes, the newest reading lowest, in steps of 1/255. It calls its own readings right or wrong
/// (0 or 255); where two accounts that say the same are merged, their odds are blended by weight. They never move the track.
/// </remarks>
public static class Hindsight
{
    /// <summary>So many of the newest readings are looked back at.</summary>
    public const int Readings = 8;

    private const int Bits = 8;
    private const double Certain = byte.MaxValue;

    /// <summary>The bytes of an account after one more reading.</summary>
    public static ulong After(ulong doubts, bool misread) => doubts << Bits | (misread ? byte.MaxValue : 0ul);

    /// <summary>The bytes of two accounts merged.</summary>
    /// <param name="one">Those of the one that stands.</param>
    /// <param name="other">Those of the one that is absorbed.</param>
    /// <param name="share">The share of the absorbed one in the weight of both, 0 to 1.</param>
    public static ulong Blend(ulong one, ulong other, double share)
    {
        if (one == other) return one;
        var blended = 0ul;
        for (var shift = 0; shift < Readings * Bits; shift += Bits)
        {
            double a = one >> shift & byte.MaxValue, b = other >> shift & byte.MaxValue;
            blended |= (ulong)Math.Round(a + (b - a) * share) << shift;
        }

        return blended;
    }

    /// <summary>Probability that each of the newest readings was misread, given all; the newest first.</summary>
    public static double[] Of(WearTrack track, WearFilter filter)
    {
        var odds = new double[Math.Min(Readings, track.Readings)];
        foreach (var (clockWeight, _, accounts) in filter.Weigh(track))
        {
            foreach (var account in accounts)
            {
                var weight = clockWeight * Math.Exp(account.LogWeight) / Certain;
                for (var back = 0; back < odds.Length; back++)
                    odds[back] += weight * (account.Doubts >> back * Bits & byte.MaxValue);
            }
        }

        return odds;
    }
}
