namespace WearWatch.Criteria;

/// <summary>A criterion for chains that lift or hold a load, as it was read: what, how much, where, and who says so.</summary>
public sealed record LiftingCriterion
{
    /// <summary>Its name in the table, such as <c>leaf-plate-height</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The chains it is for.</summary>
    public required CriterionFamily Family { get; init; }

    /// <summary>What it is about, in a word or two, such as <c>plate</c>.</summary>
    public required string Part { get; init; }

    /// <summary>The criterion in words.</summary>
    public required string Words { get; init; }

    /// <summary>Its figure; null where the words alone are the criterion, so that any such finding counts.</summary>
    public required double? Value { get; init; }

    /// <summary>Its unit in words, such as <c>percent</c>, <c>mm</c> or <c>months</c>; empty without a figure.</summary>
    public required string Unit { get; init; }

    /// <summary>What it asks for.</summary>
    public required CriterionAction Action { get; init; }

    /// <summary>Where it was printed, such as <c>uk</c>, <c>us</c>, <c>de</c>; <c>any</c> for a maker's.</summary>
    public required IReadOnlyList<string> Regions { get; init; }

    /// <summary>The numbers of docs/references.md; empty for common practice.</summary>
    public required IReadOnlyList<int> Source { get; init; }

    /// <summary>How sure it is.</summary>
    public required CriterionCertainty Certainty { get; init; }

    /// <summary>Who says so and how sure it is, as it stands on a screen.</summary>
    public string SourceWords => SourceWordsOf([this]);

    /// <summary>Who says several at once, each source named once.</summary>
    public static string SourceWordsOf(IEnumerable<LiftingCriterion> criteria) => string.Join("; ", criteria
        .GroupBy(c => (c.Certainty, IsRead: c.Source.Count > 0))
        .Select(g => Say(g.Key.Certainty, [.. g.SelectMany(c => c.Source).Distinct().Order()])));

    private static string Say(CriterionCertainty certainty, IReadOnlyList<int> sources)
    {
        var read = "docs/references.md " + string.Join(", ", sources.Select(number => $"[{number}]"));
        return (certainty, sources.Count) switch
        {
            (CriterionCertainty.FromMemory, 0) => "from memory, not verified",
            (CriterionCertainty.FromMemory, _) => $"from memory, not verified; {read}",
            (CriterionCertainty.Derived, _) => $"{read}, worked out from it",
            (_, 0) => "common practice",
            _ => read,
        };
    }
}
