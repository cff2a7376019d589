using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Lubrication;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Plant.Folders;

/// <summary>Forecasts the chains of a folder: as of their last reading, or as it would have been done then.</summary>
/// <param name="models">What is believed of each chain before its first reading.</param>
/// <param name="constants">How wear behaves there.</param>
public sealed class FolderForecasts(FolderModels models, FolderConstants constants)
{
    /// <summary>Assesses every chain as of its last reading, in the order given.</summary>
    /// <param name="chains">The chains.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="ct">Stops between two chains.</param>
    public async Task<IReadOnlyList<Assessment>> MakeAsync(
        IReadOnlyList<FolderChain> chains, IProgress<double> progress, CancellationToken ct) =>
        await InParallel.MakeAsync(chains, Make, progress, ct);

    /// <summary>What would have been forecast when only the first readings of a chain were known, in the order asked.</summary>
    /// <param name="questions">What is asked.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="ct">Stops between two answers.</param>
    public async Task<IReadOnlyList<WearForecast>> AnswerAsync(
        IReadOnlyList<Question> questions, IProgress<double> progress, CancellationToken ct) =>
        await InParallel.MakeAsync(questions, Answer, progress, ct);

    private Assessment Make(FolderChain chain)
    {
        // As of its last reading: no hours have gone by since, whether or not its time was told.
        var lastReading = chain.Readings.LastOrDefault(r => r.TakenAt is not null)?.TakenAt ?? chain.Card.FittedAt
            ?? DateTimeOffset.UnixEpoch;
        return Assessment.Of(
            chain.Card, chain.Readings, chain.Events, PriorFor(chain, chain.Card.After(chain.Events), chain.Readings),
            ProductionCalendar.AlwaysRunning, lastReading, constants.For(chain.Card));
    }

    private WearForecast Answer(Question question)
    {
        var chain = question.Chain;
        var known = chain.FirstReadings(question.ReadingsKnown);
        return Backtest.Answer(
            chain.Card, known, chain.Events, PriorFor(chain, Backtest.CardKnown(chain.Card, known, chain.Events), known),
            question.LimitPercent, known.Count, constants: constants.For(chain.Card));
    }

    private WearPrior PriorFor(FolderChain chain, ChainCard card, IReadOnlyList<Reading> readings) =>
        models.PriorFor(DutySeen.AtLastReading(card, readings, chain.Events, ProductionCalendar.AlwaysRunning));
}
