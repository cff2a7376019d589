using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A look on its way in: each point that was looked at, found or in order.</summary>
/// <remarks>
/// The maker is whoever is signed in; a maker or a plant that is told here is only compared, and another one refused.
/// </remarks>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record InspectionEntryJson
{
    public string? Chain { get; init; }

    /// <summary>The chain's id in the pack, which stays when it is renamed; it goes before the name.</summary>
    public int? ChainId { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterH { get; init; }

    public IReadOnlyList<FindingEntryJson>? Findings { get; init; }

    public string? ToldBy { get; init; }

    public int? MakerId { get; init; }

    public string? Plant { get; init; }
}

/// <summary>What was found at a point, or that it is in order.</summary>
internal sealed record FindingEntryJson(string? Point, bool? Found, string? Note);

/// <summary>A look as it was told.</summary>
internal sealed record InspectionJson(
    long Id, string Chain, DateTimeOffset TakenAt, string ToldBy, IReadOnlyList<FindingJson> Findings);

/// <summary>What was found at a point, with its photos.</summary>
internal sealed record FindingJson(string Point, bool Found, string Note, IReadOnlyList<long> Photos);

/// <summary>A point of a checklist in the pack.</summary>
internal sealed record FloorPointJson(string Point, string Ask, string Advice, bool StopsTheChain, string Source);
