using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Lifting;

/// <summary>A scanned paper without its content.</summary>
public sealed record LiftingPaper(long Id, LiftingFileKind Kind, string Name, string ToldBy, DateTimeOffset ReceivedAt);

/// <summary>A lifting chain's page: all that it draws.</summary>
public sealed record LiftingView
{
    public required ChainRow Chain { get; init; }

    public required LiftingState State { get; init; }

    /// <summary>Its entries, newest first.</summary>
    public required IReadOnlyList<LiftingCardRow> Cards { get; init; }

    public required IReadOnlyList<LiftingPaper> Papers { get; init; }

    /// <summary>Its reports that stand, newest first.</summary>
    public required IReadOnlyList<ExaminationRow> Examinations { get; init; }

    /// <summary>Its quarantines, releases and its disposal, newest first.</summary>
    public required IReadOnlyList<LiftingStepRow> Steps { get; init; }

    /// <summary>The findings that keep it out of use.</summary>
    public required IReadOnlyList<StopFinding> Stops { get; init; }

    /// <summary>Who may examine and release it today.</summary>
    public required IReadOnlyList<string> Competent { get; init; }

    public required ExaminationInterval Interval { get; init; }

    /// <summary>The last moment that its wear leaves it; null for none.</summary>
    public required DateTimeOffset? OutOfUseBy { get; init; }

    public required LawRegion Region { get; init; }

    public required PlantTime Time { get; init; }

    public LiftingCardRow? Card => Cards.Count > 0 ? Cards[0] : null;

    /// <summary>The points of its examination sheet.</summary>
    public IReadOnlyList<CheckPoint> Points => Chain.Family.CheckPoints(Chain.ToCard().HoldsLoad);
}
