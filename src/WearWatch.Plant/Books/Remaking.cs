using WearWatch.Lives;
using WearWatch.Running;
using WearWatch.Storage;
using WearWatch.Wear;

namespace WearWatch.Plant.Books;

/// <summary>Makes the forecasts of a life again as they would have been made then, from no more than was known then.</summary>
public static class Remaking
{
    /// <summary>The forecasts at each share of a life at which the chain had been measured, scored.</summary>
    /// <param name="raw">All that was told of the chain.</param>
    /// <param name="chain">The same chain in the book of lives.</param>
    /// <param name="life">One of its lives that has ended.</param>
    /// <param name="prior">What the fleet model of today lets expect of such a chain.</param>
    /// <param name="model">Its version.</param>
    /// <param name="calendar">When the line runs.</param>
    public static IEnumerable<RecordedForecast> Forecasts(
        RawChain raw, BookedChain chain, BookedLife life, WearPrior prior, string model, ProductionCalendar calendar)
    {
        var observations =
            ChainHistory.Take(raw.Card, raw.Readings, raw.Events, calendar.Knowing(raw.Ran)).Lives[life.Number].Observations;
        foreach (var share in RecordedForecast.Shares)
        {
            var standing = share * life.Life.Hours;
            var known = observations.TakeWhile(o => o.HoursSinceFitting <= standing).ToList();
            if (known.Count == 0) continue;
            yield return new RecordedForecast(
                new ScoredForecast
                {
                    Forecast = Backtest.Answer(
                        raw.Card, raw.Readings, raw.Events, prior, chain.LimitPercent, known.Max(o => o.ReadingIndex) + 1,
                        calendar),
                    LastReadingHours = known[^1].HoursSinceFitting,
                    StandingHours = standing,
                    LifeHours = life.Life.Hours,
                },
                share, model, chain.CardOf(life));
        }
    }
}
