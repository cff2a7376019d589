using WearWatch.Chains.Families;

namespace WearWatch.Lifting.Examinations;

/// <summary>A quarantine, a release or a disposal.</summary>
/// <param name="Kind">What.</param>
/// <param name="At">When it was done.</param>
/// <param name="ToldAt">When it was told.</param>
/// <param name="By">Who.</param>
/// <param name="Reason">Why.</param>
/// <param name="Closes">Of a release: the findings that it closes.</param>
public sealed record LiftingStep(
    LiftingStepKind Kind, DateTimeOffset At, DateTimeOffset ToldAt, string By, string Reason,
    IReadOnlyList<InspectionPoint> Closes);
