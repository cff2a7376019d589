using System.Globalization;
using WearWatch.Criteria;

namespace WearWatch.Dashboard.Lifting;

/// <summary>A criterion for lifting chains in the words of the screen.</summary>
public static class CriterionWords
{
    public static string Of(CriterionFamily of) => of switch
    {
        CriterionFamily.Leaf => "leaf chain",
        CriterionFamily.HoistRoller => "roller chain of a hoist",
        CriterionFamily.HoistLink => "round-link chain of a hoist",
        CriterionFamily.Sling => "chain sling",
        _ => "all that lift",
    };

    public static string Of(CriterionAction action) => action switch
    {
        CriterionAction.OutOfUse => "out of use at once",
        CriterionAction.Replace => "replace before further use",
        CriterionAction.Plan => "a competent person sets a date",
        CriterionAction.Investigate => "a competent person examines",
        CriterionAction.Forbidden => "never",
        CriterionAction.Method => "how to do it",
        CriterionAction.Interval => "when to look",
        CriterionAction.Factor => "factor of a new chain",
        CriterionAction.Record => "what to write down",
        CriterionAction.Person => "who is competent",
        CriterionAction.Dispose => "how to discard",
        CriterionAction.Example => "one maker's figure, no default",
        _ => "to know",
    };

    public static string Of(CriterionCertainty certainty) => certainty switch
    {
        CriterionCertainty.Published => "published",
        CriterionCertainty.Derived => "worked out",
        _ => "from memory, not verified",
    };

    /// <summary>A region as it stands in the table: upper case, a state behind its country.</summary>
    public static string Region(string region) =>
        region == "any" ? "any" : region.ToUpperInvariant().Replace('_', '-');

    /// <summary>The criterion; what is never done says so in the same sentence.</summary>
    public static string Of(LiftingCriterion criterion) =>
        criterion.Action == CriterionAction.Forbidden
            ? $"Never {char.ToLowerInvariant(criterion.Words[0])}{criterion.Words[1..]}"
            : criterion.Words;

    /// <summary>Its figure with the unit; nothing where the words alone are the criterion.</summary>
    public static string Figure(LiftingCriterion criterion) => criterion.Value is { } value
        ? string.Create(CultureInfo.InvariantCulture, $"{value:0.####} {criterion.Unit}")
        : "";
}
