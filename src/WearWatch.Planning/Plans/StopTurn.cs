namespace WearWatch.Planning.Plans;

/// <summary>One swap in the course of a stop.</summary>
/// <param name="Chain">The chain.</param>
/// <param name="StartH">Hours after the stop begins.</param>
/// <param name="EndH">When it ends, in the same count.</param>
/// <param name="Fitters">Which fitters do it, from 1.</param>
public sealed record StopTurn(string Chain, double StartH, double EndH, IReadOnlyList<int> Fitters);
