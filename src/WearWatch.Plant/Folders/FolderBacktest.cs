using WearWatch.Lubrication;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Plant.Folders;

/// <summary>Answers what would have been forecast then.</summary>
public static class FolderBacktest
{
    /// <summary>Answers questions in their order.</summary>
    public static async Task<IReadOnlyList<WearForecast>> AnswerAsync(
        IReadOnlyList<Question> questions, FolderModels models, FolderConstants constants, IProgress<double> progress,
        CancellationToken ct)
    {
        var answers = new WearForecast[questions.Count];
        var done = 0;
        await Parallel.ForAsync(0, questions.Count, ct, (i, _) =>
        {
            answers[i] = Answer(questions[i], models, constants);
            progress.Report(Interlocked.Increment(ref done) / (double)questions.Count);
            return ValueTask.CompletedTask;
        });
        return answers;
    }

    private static WearForecast Answer(Question question, FolderModels models, FolderConstants constants)
    {
        var known = question.Chain.FirstReadings(question.ReadingsKnown);
        var (card, events) = (question.Chain.Card, question.Chain.Events);
        var seen = DutySeen.AtLastReading(
            Backtest.CardKnown(card, known, events), known, events, ProductionCalendar.AlwaysRunning);
        return Backtest.Answer(
            card, known, events, models.PriorFor(seen), question.LimitPercent, known.Count, constants: constants.For(card));
    }
}
