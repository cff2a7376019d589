using WearWatch.Phrases;

namespace WearWatch.Chains.Parts;

/// <summary>From where on a part is worn out, and what it measures when new.</summary>
/// <param name="Part">Which part.</param>
/// <param name="NewMm">Its size when new in millimetres; nothing for what grows.</param>
/// <param name="Mm">The limit in millimetres: from here on for what grows, from here down for what shrinks.</param>
/// <param name="Rule">The rule in plain words.</param>
/// <param name="Source">Who says so.</param>
public sealed record PartLimit(WearPart Part, double NewMm, double Mm, Phrase Rule, string Source)
{
    /// <summary>The rule with its source.</summary>
    public Phrase Basis => $"{Rule}: {SourceWords.Of(Source)}";

    /// <summary>
    /// The limit of a part of a chain: the plant's own, else the trade's where it was read; null where neither is known.
    /// </summary>
    /// <remarks>With what lifts or holds a load a plant may be stricter than the trade, never milder: docs/safety.md.</remarks>
    /// <param name="card">The chain.</param>
    /// <param name="part">The part.</param>
    /// <param name="told">What the plant told of it.</param>
    public static PartLimit? Of(ChainCard card, WearPart part, PartTold told)
    {
        if (NewSize(card, part, told) is not { } fresh) return null;
        var trade = OfTrade(card, part, fresh);
        if (told.LimitMm is not { } mm) return trade;
        var own = new PartLimit(
            part, fresh.Value, mm, $"limit set by the plant",
            told.LimitSource.Length > 0 ? told.LimitSource : "set by the plant");
        return card.HoldsLoad && trade?.IsStricterThan(own) == true ? trade : own;
    }

    /// <summary>Its size when new: as told, else by the chain's type; null where neither is known.</summary>
    public static Sourced? NewSize(ChainCard card, WearPart part, PartTold told)
    {
        if (part.Grows) return new Sourced(0, "", IsVerified: true);
        if (told.NewMm is { } mm) return new Sourced(mm, "stated by the plant", IsVerified: true);
        var type = ChainCatalogue.Find(card.ChainType);
        return part switch
        {
            WearPart.RollerDiameter => type?.RollerMm,
            WearPart.PinDiameter => type?.PinMm,
            WearPart.BushDiameter => type?.BushMm,
            _ => null,
        };
    }

    private static PartLimit? OfTrade(ChainCard card, WearPart part, Sourced fresh)
    {
        if (card.Family.PartRules.FirstOrDefault(r => r.Part == part) is not { } rule) return null;
        var mm = rule.Mm ?? rule.Share * (part is WearPart.Sag ? card.CentreDistanceMm : fresh.Value);
        if (mm is not { } limit) return null;
        // A size that was only recalled is said beside the limit that is computed from it.
        return new(part, fresh.Value, limit, rule.Rule, fresh.IsVerified ? rule.Source : $"{rule.Source}; {fresh.Source}");
    }

    private bool IsStricterThan(PartLimit other) => Part.Grows ? Mm < other.Mm : Mm > other.Mm;
}
