using WearWatch.Phrases;

namespace WearWatch.Criteria;

/// <summary>A criterion for chains that lift or hold a load, as it was read: what, how much, where, and who says so.</summary>
public sealed record LiftingCriterion
{
    private const string Memory = "from memory, not verified";

    /// <summary>Its name in the table, such as <c>leaf-plate-height</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The chains it is for.</summary>
    public required CriterionFamily Family { get; init; }

    /// <summary>What it is about, in a word or two, such as <c>plate</c>.</summary>
    public required Phrase Part { get; init; }

    /// <summary>The criterion in words; what is never done says so.</summary>
    public required Phrase Words { get; init; }

    /// <summary>Its figure; null where the words alone are the criterion, so that any such finding counts.</summary>
    public required double? Value { get; init; }

    /// <summary>Its unit in words, such as <c>percent</c>, <c>mm</c> or <c>months</c>; nothing without a figure.</summary>
    public required Phrase Unit { get; init; }

    /// <summary>What it asks for.</summary>
    public required CriterionAction Action { get; init; }

    /// <summary>Where it was printed, such as <c>uk</c>, <c>us</c>, <c>de</c>; <c>any</c> for a maker's.</summary>
    public required IReadOnlyList<string> Regions { get; init; }

    /// <summary>The numbers of docs/references.md; empty for common practice.</summary>
    public required IReadOnlyList<int> Source { get; init; }

    /// <summary>How sure it is.</summary>
    public required CriterionCertainty Certainty { get; init; }

    /// <summary>Who says so: numbers of docs/references.md, or common practice.</summary>
    public string Citation => CitationOf([this]);

    /// <summary>How sure it is and who says so, in parts between semicolons; a screen says them in its language.</summary>
    public string SourceWords => SourceWordsOf([this]);

    /// <summary>Who says several at once, each source named once.</summary>
    public static string SourceWordsOf(IEnumerable<LiftingCriterion> criteria) => string.Join("; ", criteria
        .GroupBy(c => (c.Certainty, IsRead: c.Source.Count > 0))
        .SelectMany(g => g.Key switch
        {
            (CriterionCertainty.FromMemory, false) => [Memory],
            (CriterionCertainty.FromMemory, true) => [Memory, CitationOf(g)],
            (CriterionCertainty.Derived, _) => ["worked out", CitationOf(g)],
            _ => new[] { CitationOf(g) },
        }));

    private static string CitationOf(IEnumerable<LiftingCriterion> criteria)
    {
        var numbers = criteria.SelectMany(c => c.Source).Distinct().Order().Select(number => $"[{number}]").ToList();
        return numbers.Count == 0 ? "common practice" : "docs/references.md " + string.Join(", ", numbers);
    }
}
