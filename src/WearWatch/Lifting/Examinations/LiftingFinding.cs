using WearWatch.Chains.Families;

namespace WearWatch.Lifting.Examinations;

/// <summary>Something that was found on a lifting chain, by a look or at an examination.</summary>
/// <param name="Point">Where.</param>
/// <param name="FoundAt">When it was found.</param>
/// <param name="ToldAt">When it was told.</param>
/// <param name="By">Who found it.</param>
/// <param name="Note">What else was written of it, or empty.</param>
public sealed record LiftingFinding(InspectionPoint Point, DateTimeOffset FoundAt, DateTimeOffset ToldAt, string By, string Note);
