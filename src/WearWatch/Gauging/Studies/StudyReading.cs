namespace WearWatch.Gauging.Studies;

/// <summary>
/// One reading of a study of measuring: everybody measures every section several times, not knowing the earlier figures.
/// </summary>
/// <param name="Section">The marked section that was measured.</param>
/// <param name="Person">Who measured; in a study of tools, with which one.</param>
/// <param name="Value">What was measured, in millimetres or in percent of elongation, but alike throughout.</param>
public sealed record StudyReading(string Section, string Person, double Value);
