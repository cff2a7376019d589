namespace WearWatch.Signals.Passes;

/// <summary>A day at two sensors among others.</summary>
/// <param name="Day">When, in days from any beginning.</param>
/// <param name="ElongationPercent">Its elongation in percent.</param>
/// <param name="UncertaintyPercent">Standard uncertainty by what changes from day to day, in percent; above zero.</param>
public readonly record struct PassCourseDay(double Day, double ElongationPercent, double UncertaintyPercent);
