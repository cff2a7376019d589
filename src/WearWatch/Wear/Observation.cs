namespace WearWatch.Wear;

/// <summary>A reading as the track sees it.</summary>
/// <param name="HoursSinceFitting">Running hours of the fitted chain when it was taken; not negative.</param>
/// <param name="ElongationPercent">Gauged elongation in percent.</param>
/// <param name="ScatterPercent">Standard deviation of the elongation from reading to reading, in percent; above zero.</param>
/// <param name="ReadingIndex">Which of the chain's readings it is, counted from 0 in the order in which they were taken.</param>
public readonly record struct Observation(
    double HoursSinceFitting, double ElongationPercent, double ScatterPercent, int ReadingIndex);
