namespace WearWatch.Learning;

/// <summary>One point of the learning curve.</summary>
/// <param name="Chains">Chains learned from.</param>
/// <param name="Error">Root mean square error of ln rate on other chains, log-linear part.</param>
public sealed record LearningPoint(int Chains, double Error);
