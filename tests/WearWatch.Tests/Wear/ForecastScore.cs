using WearWatch.Chains;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>A forecast beside what came true.</summary>
/// <param name="LimitPercent">The limit.</param>
/// <param name="LifeShare">Share of the chain's life at which it was asked.</param>
/// <param name="Forecast">The forecast, in hours from the last reading.</param>
/// <param name="LastReadingHours">Hours since fitting at the last reading.</param>
/// <param name="NowHours">Hours since fitting when it was asked.</param>
/// <param name="TrueHours">Hours since fitting at which the limit was passed.</param>
internal sealed record ForecastScore(
    double LimitPercent, double LifeShare, WearForecast Forecast, double LastReadingHours, double NowHours, double TrueHours)
{
    public double Early => At(5);

    public double Late => At(95);

    public double RelativeError => (At(50) - TrueHours) / (TrueHours - NowHours);

    public bool Covers => Early <= TrueHours && TrueHours <= Late;

    public bool IsLateWarning => At(50) > 1.1 * TrueHours;

    /// <summary>Backtests of the decisions of a fleet.</summary>
    public static ForecastScore[] Of(
        RecordedFleet fleet, string folder, Func<ChainCard, WearPrior> priorFor, WearConstants? constants = null,
        Predicate<string>? only = null)
    {
        var cards = fleet.Cards.ToDictionary(c => c.Name);
        string[][] rows = [.. RecordedFleet.Rows(folder, "decisions.csv").Where(r => only?.Invoke(r[1]) ?? true)];
        var scores = new ForecastScore[rows.Length];
        Parallel.For(0, rows.Length, i =>
        {
            double Value(int column) => RecordedFleet.Number(rows[i][column]);
            var card = cards[rows[i][1]];
            var forecast = Backtest.Answer(
                card, fleet.Readings(card), fleet.Events(card), priorFor(card), Value(2), (int)Value(4), constants: constants);
            scores[i] = new(Value(2), Value(3), forecast, Value(5), Value(6), Value(7));
        });
        return scores;
    }

    private double At(int percent) =>
        Math.Max(NowHours, LastReadingHours + (Forecast.Quantile(percent) ?? double.PositiveInfinity));
}
