namespace WearWatch.Learning;

/// <summary>One effect on ln rate.</summary>
/// <param name="Name">Of what.</param>
/// <param name="Effect">Change of ln rate for a unit of it.</param>
/// <param name="StandardError">Standard error.</param>
public sealed record LearnedEffect(string Name, double Effect, double StandardError);
