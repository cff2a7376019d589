using System.Text.Json.Serialization;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Chains.Parts;
using WearWatch.Parts;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A part that can be measured at chains of a kind: its word in files, its name, whether it grows.</summary>
internal sealed record FloorPartNameJson(string Part, string Name, bool Grows)
{
    /// <summary>The parts of a kind of chain.</summary>
    public static IReadOnlyList<FloorPartNameJson> Of(ChainFamily family) =>
        [.. family.PartRules.Select(r => new FloorPartNameJson(Tokens.Of(r.Part), T[r.Part.Words], r.Part.Grows))];
}

/// <summary>What a phone knows of a part of one chain; there are only those of which something is known.</summary>
internal sealed record FloorPartJson
{
    public required string Part { get; init; }

    /// <summary>Its size when new; null where that is not known: then the phone asks for it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? NewMm { get; init; }

    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? LimitMm { get; init; }

    /// <summary>From here on its renewal is planned; null for a slack, which is set anew.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? PlanMm { get; init; }

    /// <summary>
    /// Of a chain that holds a load: from here on the limit may be reached within the uncertainty of a caliper.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? OutMm { get; init; }

    /// <summary>The newest reading.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? LastMm { get; init; }

    /// <summary>The parts of a chain of which something is known.</summary>
    /// <param name="card">The chain.</param>
    /// <param name="readings">What was measured of its parts.</param>
    public static IReadOnlyList<FloorPartJson> Of(ChainCard card, IReadOnlyList<PartReading> readings) =>
    [
        .. from rule in card.Family.PartRules
           let own = readings.Where(r => r.Part == rule.Part).ToList()
           let told = PartTrack.ToldOf(own)
           let limit = PartLimit.Of(card, rule.Part, told)
           let fresh = rule.Part.Grows ? null : PartLimit.NewSize(card, rule.Part, told)
           where limit is not null || fresh is not null || own.Count > 0
           select new FloorPartJson
           {
               Part = Tokens.Of(rule.Part),
               NewMm = fresh?.Value,
               LimitMm = limit?.Mm,
               PlanMm = limit is null || rule.Part is WearPart.Sag
                   ? null
                   : limit.NewMm + LimitWay.PlanFromPercent / 100 * (limit.Mm - limit.NewMm),
               OutMm = card.HoldsLoad && rule.Part.IsOfChain ? limit?.Mm + PartFinding.ExpandedMm(rule.Part) : null,
               LastMm = own.Count > 0 ? own[^1].Mm : null,
           },
    ];
}
