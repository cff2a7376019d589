using WearWatch.Planning.Plans;
using WearWatch.Plant.Files;

namespace WearWatch.Plant.Planning;

/// <summary>One thing that does not hold in a plan.</summary>
/// <param name="Kind">
/// <c>out_of_use</c>, <c>cannot_be_judged</c> and <c>hard_date_unsure</c> of chains that hold a load, which stand first;
/// <c>parts_cannot_come</c>, <c>measure_first</c>, <c>chain_left</c>, <c>crew_overloaded</c>, <c>part_short</c>,
/// <c>window_too_short</c> or <c>place_gone</c>.
/// </param>
/// <param name="Subject">The chain, crew, part or shutdown that it is about.</param>
/// <param name="At">When, or null.</param>
/// <param name="Amount">How much: hours, pieces or pitches, or a probability for a chain left on.</param>
/// <param name="Why">The reason in plain words.</param>
/// <param name="WhatWouldHelp">What would help, in plain words.</param>
public sealed record PlanRemarkJson(
    string Kind, string Subject, DateTimeOffset? At, double Amount, string Why, string WhatWouldHelp)
{
    /// <summary>A remark on the wire.</summary>
    public static PlanRemarkJson Of(PlanRemark remark) => new(
        FileWords.Of(remark.Kind), remark.Subject, remark.At, Math.Round(remark.Amount, 4), remark.Why.ToString(),
        remark.WhatWouldHelp.ToString());
}
