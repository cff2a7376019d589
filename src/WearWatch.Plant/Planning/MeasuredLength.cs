namespace WearWatch.Plant.Planning;

/// <summary>A length that was measured at a swap.</summary>
/// <param name="Length">As it was typed, in millimetres where it bears no mark of its own.</param>
/// <param name="Pitches">Over how many pitches.</param>
public sealed record MeasuredLength(string Length, int Pitches);
