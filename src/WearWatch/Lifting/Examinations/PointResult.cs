using WearWatch.Chains.Families;

namespace WearWatch.Lifting.Examinations;

/// <summary>What an examiner says of one point of the sheet.</summary>
/// <param name="Point">The point.</param>
/// <param name="Outcome">What was found.</param>
/// <param name="Measured">A measured value with its unit, place and method as the examiner wrote it, or empty.</param>
/// <param name="Note">What else the examiner wrote, or empty.</param>
public sealed record PointResult(InspectionPoint Point, PointOutcome Outcome, string Measured = "", string Note = "");
