using WearWatch.Phrases;

namespace WearWatch.Chains.Links;

/// <summary>From where on a measure of a link takes the chain out of use.</summary>
/// <param name="Measure">Of what.</param>
/// <param name="Mm">The limit in millimetres: of a length from here on, of a diameter from here down.</param>
/// <param name="Rule">The rule in plain words.</param>
/// <param name="Source">Who says so.</param>
public sealed record LinkLimit(LinkMeasure Measure, double Mm, Phrase Rule, string Source)
{
    /// <summary>Whether it holds in general, since the chain's own maker gave none.</summary>
    public bool IsGeneral { get; init; }

    /// <summary>How sure it is, such as <c>published</c> or <c>from memory</c>.</summary>
    public Phrase Certainty { get; init; } = $"published";

    /// <summary>Whether a measure grows towards it; diameters shrink.</summary>
    public bool IsLength => Measure is LinkMeasure.OneLink or LinkMeasure.SeveralLinks;

    /// <summary>Whether it trips before another one of the same measure.</summary>
    public bool IsStricterThan(LinkLimit other) => IsLength ? Mm < other.Mm : Mm > other.Mm;

    /// <summary>Source, certainty, and that it is general where it is.</summary>
    public Phrase Basis => IsGeneral
        ? Phrase.Of($"general value, {Rule}: {SourceWords.Of(Source)} ({Certainty})")
        : $"{Rule}: {SourceWords.Of(Source)} ({Certainty})";
}
