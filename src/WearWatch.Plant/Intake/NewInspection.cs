using WearWatch.Inspections;

namespace WearWatch.Plant.Intake;

/// <summary>A look at a chain on its way in.</summary>
/// <param name="Key">Given by whoever sends it: the same key sent twice is stored once.</param>
/// <param name="Chain">The chain's name.</param>
/// <param name="TakenAt">When; null for the moment at which it arrives.</param>
/// <param name="CounterH">The hour counter, or null.</param>
/// <param name="Findings">Each point that was looked at.</param>
/// <param name="ToldBy">Who told it.</param>
public sealed record NewInspection(
    string Key, string Chain, DateTimeOffset? TakenAt, double? CounterH, IReadOnlyList<Finding> Findings, string ToldBy);
