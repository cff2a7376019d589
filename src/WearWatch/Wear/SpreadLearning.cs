namespace WearWatch.Wear;

/// <summary>
/// Asks chains that have gone on how long they had, at moments of their past, and finds the spread that would have held.
/// </summary>
/// <remarks>
/// Asked is at a quarter, half and three quarters of the hours to each of two elongations: the highest that half of the chains
/// have reached, and two thirds of it. Few chains draw the spread only part of the way: n of them <c>n / (n + 15)</c>.
/// </remarks>
internal static class SpreadLearning
{
    private const double HeldBackBy = 15;
    private static readonly double[] Shares = [0.25, 0.5, 0.75];

    /// <summary>The spread for some constants; none where nothing has been reached.</summary>
    /// <param name="chains">The chains, each with what it tells and with the filter that has not learned its curve from
    /// it.</param>
    public static ForecastSpread Of(IReadOnlyList<(TellingChain Chain, StepHours Told, WearFilter Filter)> chains)
    {
        double[] reached = [.. chains.Select(c => c.Told.Steady.Max(s => s.Percent)).Order()];
        var highest = reached[reached.Length / 2];
        var asked = chains.AsParallel().AsOrdered()
            .Select(c => Ask(c, highest).Concat(Ask(c, highest * 2 / 3)).ToList()).Where(a => a.Count > 0).ToList();
        if (asked.Count == 0) return ForecastSpread.AsMade;
        return ForecastSpread.Fit([.. asked.SelectMany(a => a)]).Share(asked.Count / (asked.Count + HeldBackBy));
    }

    private static IEnumerable<(WearForecast Forecast, double HoursLeft)> Ask(
        (TellingChain Chain, StepHours Told, WearFilter Filter) chain, double percent)
    {
        var reached = 1000 * chain.Told.ThousandHoursTo(percent);
        if (!double.IsFinite(reached)) yield break;
        foreach (var share in Shares)
        {
            Observation[] known = [.. chain.Chain.Chain.Observations.TakeWhile(o => o.HoursSinceFitting <= share * reached)];
            if (known.Length == 0) continue;
            var made = chain.Filter.Forecast(chain.Filter.Follow(chain.Chain.Prior, known), percent);
            if (made.MiddleHours is > 0) yield return (made, reached - known[^1].HoursSinceFitting);
        }
    }
}
