using System.Text.Json.Serialization;
using WearWatch.Parts;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>A reading of a part on its way in. Lengths are texts in the unit (<c>24.6</c>, <c>19/64</c>).</summary>
/// <remarks>
/// The maker is whoever is signed in; a maker or a plant that is told here is only compared, and another one refused.
/// </remarks>
[JsonUnmappedMemberHandling(JsonUnmappedMemberHandling.Disallow)]
internal sealed record PartReadingEntryJson
{
    public string? Chain { get; init; }

    /// <summary>The chain's id in the pack, which stays when it is renamed; it goes before the name.</summary>
    public int? ChainId { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterH { get; init; }

    /// <summary>
    /// plate_height, roller_diameter, pin_diameter, bush_diameter, tooth_root, tooth_hook, sag or alignment.
    /// </summary>
    public string? Part { get; init; }

    /// <summary>Which one, where.</summary>
    public string? Place { get; init; }

    public string? Value { get; init; }

    /// <summary>Its size when new; stays until another is told.</summary>
    public string? New { get; init; }

    /// <summary>The plant's own limit; stays until another is told.</summary>
    public string? Limit { get; init; }

    public string? LimitSource { get; init; }

    public string? Unit { get; init; }

    public string? ToldBy { get; init; }

    public int? MakerId { get; init; }

    public string? Plant { get; init; }
}

/// <summary>What a chain's parts and its wheels say, and the readings that stand.</summary>
internal sealed record PartsJson(
    string Chain, DateTimeOffset? TensionFrom, IReadOnlyList<PartTrackJson> Parts, IReadOnlyList<PartReadingJson> Readings);

/// <summary>A part with its limit, the reading that counts and its forecast.</summary>
internal sealed record PartTrackJson
{
    public required string Part { get; init; }

    /// <summary>not_known, within_limit, plan_a_swap or swap_now: of the part, not of the chain.</summary>
    public required string Condition { get; init; }

    public required string Says { get; init; }

    public double? ValueMm { get; init; }

    public double? LimitMm { get; init; }

    public string? LimitBasis { get; init; }

    public double? UsedPct { get; init; }

    public DateTimeOffset? EarlyDate { get; init; }

    public DateTimeOffset? MiddleDate { get; init; }

    /// <summary>Why there is no forecast; empty where there is one.</summary>
    public required string NotKnown { get; init; }

    public static PartTrackJson Of(PartTrack track, PartsState state)
    {
        var known = track.Outlook as MeasureOutlook.Known;
        return new()
        {
            Part = Tokens.Of(track.Part),
            Condition = Tokens.Of(state.ConditionOf(track)),
            Says = T[PartWords.Of(track)],
            ValueMm = track.Governing?.Reading.Mm,
            LimitMm = track.Limit?.Mm,
            LimitBasis = track.Limit is { } limit ? T[limit.Basis] : null,
            UsedPct = track.Governing?.Way?.Percent,
            EarlyDate = known?.EarlyDate,
            MiddleDate = known?.MiddleDate,
            NotKnown = track.Outlook is MeasureOutlook.NotKnown not ? T[not.Reason] : "",
        };
    }
}

/// <summary>A reading of a part that stands.</summary>
internal sealed record PartReadingJson
{
    public required long Id { get; init; }

    public DateTimeOffset? TakenAt { get; init; }

    public double? CounterH { get; init; }

    public required string Part { get; init; }

    public required string Place { get; init; }

    public required double Mm { get; init; }

    public double? NewMm { get; init; }

    public double? LimitMm { get; init; }

    public required string LimitSource { get; init; }

    public required string ToldBy { get; init; }

    public static PartReadingJson Of(PartReadingRow row) => new()
    {
        Id = row.Id,
        TakenAt = row.TakenAt,
        CounterH = row.CounterH,
        Part = Tokens.Of(row.Part),
        Place = row.Place,
        Mm = row.Mm,
        NewMm = row.NewMm,
        LimitMm = row.LimitMm,
        LimitSource = row.LimitSource,
        ToldBy = row.ToldBy,
    };
}
