namespace WearWatch.Wear;

/// <summary>Since when, and from what, a chain's wear rate has risen.</summary>
/// <param name="SinceHours">Running hours at the reading before the likeliest jump.</param>
/// <param name="RateBefore">The rate until then, in percent per 1,000 h.</param>
internal readonly record struct RateRise(double SinceHours, double RateBefore)
{
    public static RateRise Of(Assessment chain)
    {
        var odds = new double[chain.Track.Readings];
        foreach (var account in chain.Track.Clocks[0].Accounts.Where(a => a is { JumpWasUp: true, JumpReading: > 0 }))
            odds[account.JumpReading] += Math.Exp(account.LogWeight);
        var jump = Math.Max(1, Array.IndexOf(odds, odds.Max()));
        return new(chain.Observations[jump - 1].Observation.HoursSinceFitting,
            chain.Observations[jump - 1].RatePercentPer1000Hours);
    }
}
