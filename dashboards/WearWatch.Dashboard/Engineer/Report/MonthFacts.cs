using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Plant.Books;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineer.Report;

/// <summary>All that the report of a month is written from.</summary>
public sealed record MonthFacts
{
    public required DateOnly Month { get; init; }

    public required string Plant { get; init; }

    public required PlantTime Time { get; init; }

    /// <summary>Chains by condition, as it stands now; those that lift apart from the others.</summary>
    public required IReadOnlyDictionary<ShownCondition, int> Conditions { get; init; }

    /// <summary>What stands against the use of each chain that lifts.</summary>
    public required LiftingStatesView Lifting { get; init; }

    /// <summary>Chains whose limit may come within eight weeks or is passed, the most urgent first.</summary>
    public required IReadOnlyList<ChainComingDue> Due { get; init; }

    /// <summary>Notices raised in the month.</summary>
    public required IReadOnlyList<(NoticeRow Notice, string Chain)> Raised { get; init; }

    /// <summary>Open notices about the whole plant.</summary>
    public required IReadOnlyList<PlantNoticeRow> PlantNotices { get; init; }

    /// <summary>Rate changes that nobody has judged yet.</summary>
    public required int Unjudged { get; init; }

    /// <summary>Readings that wait for a person.</summary>
    public required int Waiting { get; init; }

    public required FleetLives Fleet { get; init; }

    /// <summary>Every kept forecast that could be scored.</summary>
    public required IReadOnlyList<RecordedForecast> Record { get; init; }

    public required CostTerms Terms { get; init; }

    /// <summary>The month.</summary>
    public CostPeriod Period => new(Time.StartOf(Month), Time.StartOf(Month.AddMonths(1)));

    /// <summary>The twelve months before it.</summary>
    public CostPeriod YearBefore => new(Time.StartOf(Month.AddYears(-1)), Time.StartOf(Month));

    /// <summary>What all chains cost in a period.</summary>
    public CostStatement Costs(CostPeriod period) =>
        CostStatement.Sum(Fleet.Chains.SelectMany(c => c.Lives.Select(l => CostStatement.Of(c, l, Terms, period))));
}

/// <summary>A chain that comes due.</summary>
/// <param name="Name">The chain.</param>
/// <param name="Line">Its line.</param>
/// <param name="Condition">How it stands with it.</param>
/// <param name="EarlyDate">The planner's date.</param>
/// <param name="PlannedFor">When its swap is planned; null when it is in no plan.</param>
/// <param name="OutOfUseBy">Of a chain that holds a load: its hard date; null for none.</param>
public sealed record ChainComingDue(
    string Name, string Line, ShownCondition Condition, DateTimeOffset? EarlyDate, DateTimeOffset? PlannedFor,
    DateTimeOffset? OutOfUseBy = null)
{
    /// <summary>Whether it is out of use from its hard date, since no swap by then is planned.</summary>
    public bool IsLeft => OutOfUseBy is { } by && !(PlannedFor <= by);
}
