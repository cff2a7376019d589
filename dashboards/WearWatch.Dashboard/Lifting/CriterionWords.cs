using WearWatch.Criteria;

namespace WearWatch.Dashboard.Lifting;

/// <summary>A criterion for lifting chains in the words of the screen.</summary>
public static class CriterionWords
{
    public static string Of(CriterionFamily of) => of switch
    {
        CriterionFamily.Leaf => T["leaf chain"],
        CriterionFamily.HoistRoller => T["roller chain of a hoist"],
        CriterionFamily.HoistLink => T["round-link chain of a hoist"],
        CriterionFamily.Sling => T["chain sling"],
        _ => T["all that lift"],
    };

    public static string Of(CriterionAction action) => action switch
    {
        CriterionAction.OutOfUse => T["out of use at once"],
        CriterionAction.Replace => T["replace before further use"],
        CriterionAction.Plan => T["a competent person sets a date"],
        CriterionAction.Investigate => T["a competent person examines"],
        CriterionAction.Forbidden => T["never"],
        CriterionAction.Method => T["how to do it"],
        CriterionAction.Interval => T["when to look"],
        CriterionAction.Factor => T["factor of a new chain"],
        CriterionAction.Record => T["what to write down"],
        CriterionAction.Person => T["who is competent"],
        CriterionAction.Dispose => T["how to discard"],
        CriterionAction.Example => T["one maker's figure, no default"],
        _ => T["to know"],
    };

    public static string Of(CriterionCertainty certainty) => certainty switch
    {
        CriterionCertainty.Published => T["published"],
        CriterionCertainty.Derived => T["worked out"],
        _ => T["from memory, not verified"],
    };

    /// <summary>A region as it stands in the table: upper case, a state behind its country.</summary>
    public static string Region(string region) => region switch
    {
        "any" => T["any"],
        "maker" => T["a maker"],
        _ => region.ToUpperInvariant().Replace('_', '-'),
    };

    /// <summary>Its figure with the unit; nothing where the words alone are the criterion.</summary>
    public static string Figure(LiftingCriterion criterion) => criterion.Value is { } value
        ? T[$"{value:0.####} {criterion.Unit}"]
        : "";
}
