using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Planning.Plans;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Settings;
using WearWatch.Plant.WorkOrders;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Planning;

/// <summary>Gathers what a plan is made from: forecasts, shutdowns, store, costs, and the decisions that stand.</summary>
public sealed class PlanQuery(IDbContextFactory<WearDb> databases, PlantSettings settings, PlantClock clock)
{
    /// <summary>A chain is planned for when its limit falls into the horizon with at least this probability.</summary>
    public const double WorthPlanning = 0.05;

    /// <summary>All that a plan is made from, as of now.</summary>
    /// <param name="ct">Ends it.</param>
    /// <param name="weeks">How far to plan ahead; null for what the plant has set with its costs.</param>
    public async Task<PlanPicture> AskAsync(CancellationToken ct, int? weeks = null)
    {
        var time = await clock.NowAsync(ct);
        var calendar = await settings.CalendarAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        var costs = await db.PlanningCosts.AsNoTracking().OrderBy(c => c.Id).FirstOrDefaultAsync(ct) ?? CostRows.Usual();
        var now = TimeZoneInfo.ConvertTime(time.Now, time.Zone);
        var end = now.AddDays(7 * (weeks ?? costs.HorizonWeeks));
        var revision = await RevisionAsync(db, ct); // before the decisions: what comes in between is then seen as newer
        var rules = await db.WindowRules.AsNoTracking().OrderBy(r => r.Id).ToListAsync(ct);
        var spares = await db.Spares.AsNoTracking().ToListAsync(ct);
        var orders = (await db.Purchases.AsNoTracking().Where(p => p.State <= PurchaseState.Confirmed).ToListAsync(ct))
            .ConvertAll(p => new PurchaseLine(p, time.Today));
        var frame = new PlanInput
        {
            Now = now,
            HorizonEnd = end,
            FrozenUntil = now.AddHours(costs.FrozenHours),
            Tasks = [],
            Windows = [.. rules.SelectMany(r => PlanRows.ToRule(r).Between(now, end, time.Zone))],
            Spares = [.. spares.Select(s => PlanRows.ToSpare(s, orders, time.Zone))],
            Costs = CostRows.ToCosts(costs, await db.LineCosts.AsNoTracking().ToListAsync(ct)),
            Calendar = calendar,
        };
        var planned = await db.Swaps.AsNoTracking().Where(s => s.Outcome == SwapEnd.Planned)
            .ToDictionaryAsync(s => s.ChainId, ct);
        var orderOf = await db.PlannedOrdersAsync(ct);
        var terms = await db.SwapTerms.AsNoTracking().ToDictionaryAsync(t => t.ChainId, ct);
        var works = (await db.SwapWorks.AsNoTracking().ToListAsync(ct)).ToDictionary(w => w.Family, PlanRows.ToWork);
        var chains = await (from chain in db.Chains
                            join forecast in db.Forecasts.Where(f => f.IsLatest) on chain.Id equals forecast.ChainId into known
                            from forecast in known.DefaultIfEmpty()
                            orderby chain.Name
                            select new { chain, forecast }).AsNoTracking().ToListAsync(ct);
        var loads = await HeldLoads.ReadAsync(db, now, time.Zone, ct);
        var groupOf = loads.GroupsOf(chains.Select(c => c.chain), terms);
        var swaps = chains.Where(c => c.forecast is not null).Select(c => (c.chain, c.forecast, Task: TaskOf(
            c.chain, c.forecast, terms.GetValueOrDefault(c.chain.Id) ?? new SwapTermsRow(),
            works.GetValueOrDefault(c.chain.Family) ?? c.chain.Family.UsualSwap, frame, costs) with
        {
            ParallelGroup = groupOf[c.chain.Id],
            OutOfUseBy = loads.HardDateOf(c.chain, c.forecast),
        })).ToList();
        var due = DueOf(frame, [.. swaps.Select(s => (s.chain.Id, s.Task))], planned, loads);
        var tasks = swaps.Where(s => due.Contains(s.chain.Id)).ToList();
        var faces = ShortenedTogether.Of(swaps.ToDictionary(t => t.chain.Name, t => (FaceOf(t.chain, t.forecast), t.Task)));
        return new PlanPicture
        {
            Input = frame with
            {
                Tasks = [.. tasks.Select(t => t.Task)],
                Shortenings = ShortenedTogether.Within(frame, faces.Values),
                LoadWarnings = [.. chains
                    .Select(c => loads.WarningOf(c.chain, c.forecast, planned.GetValueOrDefault(c.chain.Id)))
                    .OfType<LoadWarning>()],
            },
            Faces = tasks.ToDictionary(t => t.chain.Name, t => faces[t.chain.Name]),
            Swaps = tasks.Where(t => planned.ContainsKey(t.chain.Id)).ToDictionary(t => t.chain.Name, t => planned[t.chain.Id]),
            Orders = tasks.Where(t => orderOf.ContainsKey(t.chain.Id)).ToDictionary(t => t.chain.Name, t => orderOf[t.chain.Id]),
            Assumed = tasks.ToDictionary(t => t.chain.Name, t => AssumedOf(
                t.chain, costs.Id != 0, spares,
                works.ContainsKey(t.chain.Family) || terms.GetValueOrDefault(t.chain.Id)?.Hours != null)),
            Suppliers = spares.Where(s => s.Supplier.Length > 0).ToDictionary(PlanRows.ToPart, s => s.Supplier),
            Revision = revision,
            Time = time,
        };
    }

    /// <summary>The ids of the chains whose swaps a plan places.</summary>
    private static HashSet<int> DueOf(
        PlanInput frame, (int Id, SwapTask Task)[] swaps, Dictionary<int, SwapRow> planned, HeldLoads loads)
    {
        var lastDate = frame.HorizonEnd + frame.Costs.NextChance;
        var hours = frame.Calendar.Between(frame.Now, lastDate).Hours;
        // A swap whose shutdown has begun waits for a word on what became of it, and one after the horizon is not looked at:
        // neither is in a new plan, unless a hard date comes before.
        var open = swaps.Where(s => planned.GetValueOrDefault(s.Id)?.Start is not { } start
            || (start > frame.Now && (start < frame.HorizonEnd || start > s.Task.OutOfUseBy))).ToArray();
        var due = open.Where(s => planned.ContainsKey(s.Id) || s.Task.OutOfUseBy <= lastDate || loads.IsTakenOut(s.Id)
            || s.Task.Left.ProbabilityPast(hours) >= WorthPlanning).ToArray();
        // One chain of a set that must go takes the others along, however little they have worn.
        var sets = due.Where(s => loads.IsInSet(s.Id)).Select(s => (s.Task.Line, s.Task.ParallelGroup)).ToHashSet();
        return [.. due.Select(s => s.Id),
            .. open.Where(s => sets.Contains((s.Task.Line, s.Task.ParallelGroup))).Select(s => s.Id)];
    }

    /// <summary>The pitches that a swap of a chain takes.</summary>
    public static int PitchesOf(ChainRow chain) => chain.Pitches ?? CostTerms.UsualPitches;

    /// <summary>
    /// Which state the decisions have: rows are only added, and each ends once or is counted as taken back, so that a number
    /// never comes again.
    /// </summary>
    internal static async Task<int> RevisionAsync(WearDb db, CancellationToken ct) =>
        await db.Swaps.CountAsync(ct) + await db.Swaps.CountAsync(s => s.Outcome != SwapEnd.Planned, ct)
        + 2 * await db.Swaps.SumAsync(s => s.Undone, ct);

    private static ChainFace FaceOf(ChainRow chain, ForecastRow forecast) =>
        new(
            chain, ConditionWords.Of(forecast.Condition, chain.HoldsLoad), forecast.EarlyDate, forecast.MiddleDate,
            forecast.LateDate, forecast.ElongationPct)
        {
            LimitedBy = forecast.First.Cause,
            ShortenFrom = forecast.ShortenEarlyDate,
            ShortenPitches = forecast.ShortenPitches,
            TensionFrom = forecast.TensionFrom,
            SprocketsAreWorn = AreWorn(forecast),
        };

    // What is worn two thirds of the way does not last another chain; teeth that end this one do not either.
    private static bool AreWorn(ForecastRow forecast) =>
        forecast.SprocketCondition is Condition.PlanASwap or Condition.SwapNow || forecast.First.IsOfSprockets;

    private static IReadOnlyList<PlanAssumption> AssumedOf(
        ChainRow chain, bool costsAreSet, IReadOnlyList<SpareRow> spares, bool workIsSet)
    {
        var spare = spares.FirstOrDefault(s => PlanRows.ToPart(s) == new Part(PartKind.Chain, TypeOf(chain)));
        return
        [
            .. costsAreSet ? [] : new[] { PlanAssumption.Costs },
            .. workIsSet ? [] : new[] { PlanAssumption.SwapWork },
            .. spare?.Price > 0 ? [] : new[] { PlanAssumption.ChainPrice },
            .. spare is not null ? [] : new[] { PlanAssumption.Parts },
        ];
    }

    private static SwapTask TaskOf(
        ChainRow chain, ForecastRow forecast, SwapTermsRow terms, SwapWork work, PlanInput frame, PlanningCostsRow costs)
    {
        var runSince = frame.Calendar.Between(forecast.MadeAt, frame.Now).Hours;
        var pitches = PitchesOf(chain);
        var type = TypeOf(chain);
        var spare = frame.Spares.FirstOrDefault(s => s.Part == new Part(PartKind.Chain, type));
        var takesSprockets = terms.WithSprockets || AreWorn(forecast);
        var price = spare?.Price is > 0 and var each ? each : costs.UsualPitchPrice;
        return new SwapTask
        {
            Chain = chain.Name,
            Line = chain.Line,
            ChainType = type,
            Left = new HoursToLimit(forecast.First.Forecast, forecast.First.HoursSince + runSince),
            HoursRun = forecast.HoursNow + runSince,
            Hours = terms.Hours ?? work.HoursFor(pitches),
            People = terms.People ?? work.People,
            Needs = [.. PartNeed.Of(chain.Family.CutFor(pitches, chain.HoldsLoad), type),
                .. takesSprockets ? SprocketsOf(chain, type) : []],
            MeasureFirst = forecast is { ReadingsUsed: 0, LastLinkMeasureId: null, Sooner: null },
            ChainPrice = price * pitches,
            // Sprockets that are replaced in any case are not lost by waiting.
            SprocketPrice = takesSprockets ? 0 : costs.SprocketPrice,
        };
    }

    /// <summary>The sprockets of a chain, as the store counts them.</summary>
    public static IEnumerable<PartNeed> SprocketsOf(ChainRow chain, string type) =>
        chain.SprocketTeeth.GroupBy(teeth => teeth).Select(same => new PartNeed(Part.SprocketFor(type, same.Key), same.Count()));

    /// <summary>The chain type in the store; a chain without one goes by its pitch.</summary>
    public static string TypeOf(ChainRow chain) =>
        chain.ChainType.Length > 0 ? chain.ChainType : FormattableString.Invariant($"pitch {chain.PitchMm:0.###} mm");
}
