namespace WearWatch.Criteria;

/// <summary>A criterion for chains that lift or hold a load, as it was read: what, how much, where, and who says so.</summary>
/// <param name="Id">Its name in the table, such as <c>leaf-plate-height</c>.</param>
/// <param name="Family">The chains it is for.</param>
/// <param name="Part">What it is about, in a word or two, such as <c>plate</c>.</param>
/// <param name="Words">The criterion in words.</param>
/// <param name="Value">Its figure; null where the words alone are the criterion, so that any such finding counts.</param>
/// <param name="Unit">Its unit in words, such as <c>percent</c>, <c>mm</c> or <c>months</c>; empty without a figure.</param>
/// <param name="Action">What it asks for.</param>
/// <param name="Regions">Where it was printed, such as <c>uk</c>, <c>us</c>, <c>de</c>; <c>any</c> for a maker's.</param>
/// <param name="Source">The numbers of docs/references.md; empty for common practice.</param>
/// <param name="Certainty">How sure it is.</param>
public sealed record LiftingCriterion(
    string Id, CriterionFamily Family, string Part, string Words, double? Value, string Unit, CriterionAction Action,
    IReadOnlyList<string> Regions, IReadOnlyList<int> Source, CriterionCertainty Certainty)
{
    /// <summary>Who says so and how sure it is, as it stands on a screen.</summary>
    public string SourceWords => (Certainty, Source.Count) switch
    {
        (CriterionCertainty.FromMemory, 0) => "from memory, not verified",
        (CriterionCertainty.FromMemory, _) => $"from memory, not verified; {Read}",
        (CriterionCertainty.Derived, _) => $"{Read}, worked out from it",
        (_, 0) => "common practice",
        _ => Read,
    };

    private string Read => "docs/references.md " + string.Join(", ", Source.Select(number => $"[{number}]"));
}
