using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Webhooks;

/// <summary>What a webhook says of a chain that was replaced. No person is named.</summary>
public sealed record ReplacementEventJson
{
    /// <summary>The number of the event; the same as in the API.</summary>
    public required long Event { get; init; }

    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>Its line.</summary>
    public required string Line { get; init; }

    /// <summary>Its position.</summary>
    public required string Position { get; init; }

    /// <summary>When it was replaced; null when nobody told.</summary>
    public required DateTimeOffset? TakenAt { get; init; }

    /// <summary>The hour counter before, h; null when nobody told.</summary>
    public required double? CounterHBefore { get; init; }

    /// <summary>The hour counter after, h; null when nobody told.</summary>
    public required double? CounterHAfter { get; init; }

    /// <summary>The lot of the chain that was fitted; or empty.</summary>
    public required string Lot { get; init; }

    /// <summary>Whether the chain that was taken off broke while it ran.</summary>
    public required bool Broke { get; init; }

    /// <summary>How many pitches the chain that was fitted has; null when nobody told.</summary>
    public required int? NewPitches { get; init; }

    /// <summary>The number of the event that this one replaces; null for none.</summary>
    public required long? Corrects { get; init; }

    /// <summary>Whether that event is withdrawn: the chain was not replaced.</summary>
    public required bool Withdrawn { get; init; }

    /// <summary>What no figure says of a chain that lifts or holds a load; null for any other.</summary>
    public required string? Caution { get; init; }

    /// <summary>A replacement of a chain, as it was told.</summary>
    internal static ReplacementEventJson Of(EventRow told, ChainRow chain) => new()
    {
        Event = told.Id,
        Chain = chain.Name,
        Line = chain.Line,
        Position = chain.Position,
        TakenAt = told.At,
        CounterHBefore = told.CounterBeforeH,
        CounterHAfter = told.CounterAfterH,
        Lot = told.Lot,
        Broke = told.Broke,
        NewPitches = told.NewPitches,
        Corrects = told.CorrectsId,
        Withdrawn = told.Withdraws,
        Caution = NoticeEventJson.CautionOf(chain),
    };
}
