using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;

namespace WearWatch.Storage.Rows;

/// <summary>A quarantine, a release or a disposal of a lifting chain. Rows are only ever added.</summary>
public sealed class LiftingStepRow
{
    public long Id { get; init; }

    public int ChainId { get; init; }

    /// <summary>Given by whoever sends it: sent twice, it is stored once.</summary>
    public required string Key { get; init; }

    public LiftingStepKind Kind { get; init; }

    public DateTimeOffset At { get; init; }

    public required string By { get; init; }

    /// <summary>Of a release: the appointment by which it was given.</summary>
    public int? AppointmentId { get; init; }

    public required string Reason { get; init; }

    /// <summary>Of a release: the findings that it closes.</summary>
    public IReadOnlyList<InspectionPoint> Closes { get; init; } = [];

    public DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The step as the domain knows it.</summary>
    public LiftingStep ToStep() => new(Kind, At, ReceivedAt, By, Reason, Closes);
}
