namespace WearWatch.Plant.Intake;

/// <summary>A row that was not taken.</summary>
/// <param name="Fields">The row as it was written.</param>
/// <param name="Why">Why it was refused.</param>
public sealed record RefusedLine(string Fields, Phrase Why);
