namespace WearWatch.Learning;

/// <summary>How an input did that has to lower the error on unseen chains before it is used.</summary>
/// <param name="Input">Its name, such as <c>hours since oiling</c>.</param>
/// <param name="Chains">Chains that tell it.</param>
/// <param name="ErrorWithout">Cross-validated error of ln rate without it.</param>
/// <param name="ErrorWith">The same with it.</param>
/// <param name="IsUsed">Whether it won by more than one standard error of the difference: less may be luck.</param>
public sealed record InputTrial(string Input, int Chains, double ErrorWithout, double ErrorWith, bool IsUsed)
{
    /// <summary>With fewer chains that tell it, an input is not tried.</summary>
    public const int FewestChains = 20;

    /// <summary>Tries the inputs that are on trial, one after the other, each on top of those that have won.</summary>
    internal static (IReadOnlyList<DutyInput> Inputs, IReadOnlyList<InputTrial> Trials) Of(
        IReadOnlyList<RateSample> samples, int seed)
    {
        List<DutyInput> inputs = [.. DutyInput.All.Where(i => !i.OnTrial)];
        var trials = new List<InputTrial>();
        foreach (var input in DutyInput.All.Where(i => i.OnTrial))
        {
            double[] told = [.. samples.Select(s => input.ValuesOf(s.Card)).OfType<double[]>().Select(v => v[0])];
            if (told.Length < FewestChains || told.Max() - told.Min() < LeastRange) continue;
            var trial = Try(samples, inputs, input, told.Length, seed);
            trials.Add(trial);
            if (trial.IsUsed) inputs.Add(input);
        }

        return (inputs, trials);
    }

    /// <summary>Where all chains tell the same, there is nothing to learn.</summary>
    private const double LeastRange = 1e-6;

    private static InputTrial Try(
        IReadOnlyList<RateSample> samples, IReadOnlyList<DutyInput> inputs, DutyInput input, int chains, int seed)
    {
        var tauSquared = LogLinearRate.Fit(samples, inputs).TauSquared;
        var without = CrossValidation.OfLine(samples, inputs, tauSquared, seed);
        var with = CrossValidation.OfLine(samples, [.. inputs, input], tauSquared, seed);
        return new InputTrial(
            input.Name, chains, without.RootMeanSquare(without.LineErrors), with.RootMeanSquare(with.LineErrors),
            without.IsClearlyLower(with.LineErrors, without.LineErrors));
    }
}
