namespace WearWatch.Wear;

/// <summary>Keeps the accounts of a chain few: drops the improbable ones and merges those that say the same.</summary>
/// <remarks>
/// Dropped: ln weight more than 14 below the best. Merged: same time, same last jump (or both older than three readings),
/// ln rates within a tenth of a standard deviation + 0.01, wear within a quarter + 0.0001, rate variances within 0.6 to 1.7;
/// the weights add up and the heavier belief stands. At most K are kept.
/// </remarks>
internal static class Pruning
{
    private const double NegligibleLogWeight = 14;
    private const int RecentReadings = 3;

    /// <summary>ln of the sum of the weights.</summary>
    public static double LogSum(ReadOnlySpan<Hypothesis> accounts)
    {
        var best = double.NegativeInfinity;
        foreach (ref readonly var account in accounts) best = Math.Max(best, account.LogWeight);
        var sum = 0.0;
        foreach (ref readonly var account in accounts) sum += Math.Exp(account.LogWeight - best);
        return best + Math.Log(sum);
    }

    /// <summary>The accounts worth keeping, heaviest first, their weights adding up to one.</summary>
    /// <param name="split">All accounts; their order is changed.</param>
    /// <param name="number">Number of the reading, from 0.</param>
    /// <param name="most">K.</param>
    /// <param name="logTotal">ln of the sum of the weights.</param>
    public static Hypothesis[] Keep(Span<Hypothesis> split, int number, int most, double logTotal)
    {
        SortByWeight(split);
        var floor = split[0].LogWeight - NegligibleLogWeight;
        var kept = 0;
        foreach (ref readonly var account in split)
        {
            if (account.LogWeight < floor) break;
            if (!Absorbed(account, split[..kept], number) && kept < most) split[kept++] = account;
        }

        // What was merged may now outweigh what stood before it; a fixed order keeps results the same to the bit.
        SortByWeight(split[..kept]);
        var accounts = split[..kept].ToArray();
        var shift = LogSum(accounts);
        for (var i = 0; i < accounts.Length; i++) accounts[i] = accounts[i] with { LogWeight = accounts[i].LogWeight - shift };
        return accounts;
    }

    private static bool Absorbed(in Hypothesis account, Span<Hypothesis> kept, int number)
    {
        foreach (ref var other in kept)
        {
            if (!SaysTheSame(other, account, number)) continue;
            var more = other.LogWeight + Math.Log(1 + Math.Exp(account.LogWeight - other.LogWeight));
            other = other with
            {
                LogWeight = more,
                Doubts = Hindsight.Blend(other.Doubts, account.Doubts, Math.Exp(account.LogWeight - more)),
            };
            return true;
        }

        return false;
    }

    private static bool SaysTheSame(in Hypothesis heavier, in Hypothesis other, int number)
    {
        if (heavier.Hours != other.Hours || heavier.LastMisread != other.LastMisread) return false;
        var sameJump = heavier.JumpReading == other.JumpReading && heavier.JumpWasUp == other.JumpWasUp;
        var bothOld = Math.Max(heavier.JumpReading, other.JumpReading) < number - RecentReadings;
        if (!sameJump && !bothOld) return false;

        var (belief, against) = (heavier.Belief, other.Belief);
        var ratio = belief.LogRateVariance / against.LogRateVariance;
        return Math.Abs(belief.LogRate - against.LogRate) < 0.1 * Math.Sqrt(belief.LogRateVariance) + 0.01
            && Math.Abs(belief.Wear - against.Wear) < 0.25 * Math.Sqrt(belief.WearVariance) + 1e-4
            && ratio is > 0.6 and < 1.7;
    }

    /// <summary>Sorts by falling weight; equal weights keep their order (insertion sort: at most 4 K accounts).</summary>
    private static void SortByWeight(Span<Hypothesis> accounts)
    {
        for (var i = 1; i < accounts.Length; i++)
        {
            var account = accounts[i];
            var at = i;
            for (; at > 0 && accounts[at - 1].LogWeight < account.LogWeight; at--) accounts[at] = accounts[at - 1];
            accounts[at] = account;
        }
    }
}
