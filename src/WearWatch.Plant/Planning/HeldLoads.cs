using Microsoft.EntityFrameworkCore;
using WearWatch.Lifting.Examinations;
using WearWatch.Planning.Swaps;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Planning;

/// <summary>What a plan has to know of the chains that hold a load: hard dates, sets, what is out of use already.</summary>
internal sealed class HeldLoads
{
    private readonly IReadOnlyDictionary<int, string> setOf;
    private readonly IReadOnlyDictionary<int, LiftingStateRow> stateOf;
    private readonly DateTimeOffset now;
    private readonly TimeZoneInfo zone;

    private HeldLoads(
        IReadOnlyDictionary<int, string> setOf, IReadOnlyDictionary<int, LiftingStateRow> stateOf, DateTimeOffset now,
        TimeZoneInfo zone) => (this.setOf, this.stateOf, this.now, this.zone) = (setOf, stateOf, now, zone);

    /// <summary>Reads the register of lifting chains.</summary>
    /// <param name="db">The plant's memory.</param>
    /// <param name="now">The moment.</param>
    /// <param name="zone">The plant's time zone, in which dates are told.</param>
    /// <param name="ct">Ends it.</param>
    public static async Task<HeldLoads> ReadAsync(WearDb db, DateTimeOffset now, TimeZoneInfo zone, CancellationToken ct)
    {
        var sets = await db.LiftingCards.AsNoTracking()
            .Where(c => c.ChainSet != "" && !db.LiftingCards.Any(newer => newer.ChainId == c.ChainId && newer.Id > c.Id))
            .Select(c => new { c.ChainId, c.ChainSet }).ToListAsync(ct);
        var states = await db.LiftingStates.AsNoTracking().ToDictionaryAsync(s => s.ChainId, ct);
        return new HeldLoads(sets.ToDictionary(s => s.ChainId, s => s.ChainSet), states, now, zone);
    }

    /// <summary>Whether a chain is out of use already.</summary>
    public bool IsTakenOut(int chainId) =>
        stateOf.GetValueOrDefault(chainId) is { Standing: not LiftingStanding.InUse };

    /// <summary>Whether a finding or an examiner's report stops a chain that nobody has taken out of use or released.</summary>
    private bool IsStopped(int chainId) => !IsTakenOut(chainId) && stateOf.GetValueOrDefault(chainId) is { } state
        && state.Faults.Any(f => f.Kind is LiftingFaultKind.StopFinding or LiftingFaultKind.ReportOutOfUse);

    /// <summary>Whether a reading in doubt would take it out of use.</summary>
    private bool IsInDoubt(int chainId) =>
        stateOf.GetValueOrDefault(chainId)?.Faults.Any(f => f.Kind == LiftingFaultKind.ReadingInDoubt) == true;

    /// <summary>Whether a chain is one of a set.</summary>
    public bool IsInSet(int chainId) => setOf.ContainsKey(chainId);

    /// <summary>
    /// The moment after which a chain must not be used; null for one that holds no load, that is out of use already, or whose
    /// limit is not near. It is now for a chain that a finding stops. A forecast made before hard dates were kept gives its early
    /// date.
    /// </summary>
    public DateTimeOffset? HardDateOf(ChainRow chain, ForecastRow forecast)
    {
        if (!chain.HoldsLoad || IsTakenOut(chain.Id)) return null;
        var byWear = forecast.OutOfUseBy ?? (forecast.Condition == Condition.NotKnown ? null : forecast.EarlyDate);
        var date = IsStopped(chain.Id) && !(byWear < now) ? now : byWear;
        return date is { } by ? TimeZoneInfo.ConvertTime(by, zone) : null;
    }

    /// <summary>
    /// By the chain's id, the name of those that are swapped together on its line: its set, with the strands that go with
    /// any of them.
    /// </summary>
    public IReadOnlyDictionary<int, string> GroupsOf(IEnumerable<ChainRow> chains, IReadOnlyDictionary<int, SwapTermsRow> terms)
    {
        var groups = chains.ToDictionary(c => c.Id, c => (c.Line, Group: terms.GetValueOrDefault(c.Id)?.ParallelGroup ?? ""));
        var setOfGroup = groups.Where(g => g.Value.Group.Length > 0 && setOf.ContainsKey(g.Key))
            .GroupBy(g => g.Value).ToDictionary(g => g.Key, g => setOf[g.First().Key]);
        return groups.ToDictionary(g => g.Key, g =>
            (setOf.GetValueOrDefault(g.Key) ?? setOfGroup.GetValueOrDefault(g.Value)) is { } set ? "set " + set : g.Value.Group);
    }

    /// <summary>What is to be said first of a chain; null for nothing.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="forecast">Its newest forecast, or null.</param>
    /// <param name="swap">Its planned swap, or null.</param>
    public LoadWarning? WarningOf(ChainRow chain, ForecastRow? forecast, SwapRow? swap)
    {
        if (!chain.HoldsLoad) return null;
        if (IsTakenOut(chain.Id)) return new LoadWarning(chain.Name, chain.Line, LoadWarningKind.TakenOut);
        if (IsStopped(chain.Id)) return new LoadWarning(chain.Name, chain.Line, LoadWarningKind.Stopped);
        if (forecast is null or { Condition: Condition.NotKnown } || IsInDoubt(chain.Id))
            return new LoadWarning(chain.Name, chain.Line, LoadWarningKind.CannotBeJudged);
        return swap?.Start is { } begun && begun <= now
            ? new LoadWarning(
                chain.Name, chain.Line, LoadWarningKind.SwapBegun, HardDateOf(chain, forecast),
                TimeZoneInfo.ConvertTime(begun, zone))
            : null;
    }
}
