using WearWatch.Chains;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Lifting;

/// <summary>What an entry of the register of lifting chains must have before it is kept.</summary>
internal static class LiftingCardCheck
{
    private const int LongestText = 200;
    private const double MostKg = 1_000_000;

    /// <summary>What is wrong with it; empty when it can be kept.</summary>
    /// <param name="card">The entry.</param>
    /// <param name="plants">Whose law the plant stands under.</param>
    /// <param name="today">The plant's day.</param>
    public static IEnumerable<Refusal> Faults(LiftingCardRow card, LawRegion plants, DateOnly today)
    {
        if (card.WorkingLoadKg is { } load && load is not (> 0 and <= MostKg))
            yield return new("working_load_kg", $"A working load lies above 0 and at most at 1,000,000 kg.");
        if (card.ProofLoadKg is { } proof && proof is not (> 0 and <= MostKg))
            yield return new("proof_load_kg", $"A proof load lies above 0 and at most at 1,000,000 kg.");
        if (card.ProofLoadKg < card.WorkingLoadKg)
            yield return new("proof_load_kg", $"A proof load is not below the working load: one of the two has a slip.");
        if (card.WorkingLoadKg is not null && card.WorkingLoadOf.Length == 0)
            yield return new("working_load_of", $"Say for what it holds: one chain, the pair, one leg, the whole sling.");
        if (card.CertificateOn > today) yield return new("certificate_on", $"The day lies in the future.");
        if (card.ProofTestOn > today) yield return new("proof_test_on", $"The day lies in the future.");
        if (card.LiftsPerWeek is < 0 or > 100_000)
            yield return new("lifts_per_week", $"Lifts in a week lie between 0 and 100,000.");
        var asked = new IntervalCase(
            card.Region == LawRegion.NotSet ? plants : card.Region, card.Use, card.LiftsPersons, card.HeavyUse,
            card.LiftsPerWeek);
        if (card.ExaminationMonths is { } months
            && ExaminationInterval.Fault(IntervalRules.For(asked), months, card.WrittenSchemeFileId is not null) is { } fault)
            yield return new("examination_months", fault);
        foreach (var (field, text) in Texts(card))
            if (text.Length > LongestText) yield return new(field, $"Longer than {LongestText} characters.");
    }

    private static IEnumerable<(string, string)> Texts(LiftingCardRow card) =>
    [
        ("working_load_of", card.WorkingLoadOf), ("certificate_number", card.CertificateNumber),
        ("proof_test_number", card.ProofTestNumber), ("maker", card.Maker), ("standard", card.Standard), ("grade", card.Grade),
        ("trace_mark", card.TraceMark), ("chain_set", card.ChainSet), ("written_scheme", card.WrittenScheme), ("why", card.Why),
    ];
}
