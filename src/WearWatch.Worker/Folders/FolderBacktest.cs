using WearWatch.Wear;

namespace WearWatch.Worker.Folders;

/// <summary>Answers what would have been forecast then.</summary>
public static class FolderBacktest
{
    /// <summary>Answers questions in their order.</summary>
    public static async Task<IReadOnlyList<WearForecast>> AnswerAsync(
        IReadOnlyList<Question> questions, FolderModels models, FolderConstants constants, IProgress<double> progress, CancellationToken ct)
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
        return Backtest.Answer(
            question.Chain.Card, known, question.Chain.Events, models.PriorFor(question.Chain.Card), question.LimitPercent, known.Count,
            constants: constants.For(question.Chain.Card));
    }
}
