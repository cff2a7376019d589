using WearWatch.Chains;
using WearWatch.Phrases;

namespace WearWatch.Lifting.Examinations;

/// <summary>The months between two thorough examinations, by region and use.</summary>
/// <remarks>
/// Guidance with its source, not law: the local law of the day and the competent person decide. Where a trade's guidance is
/// stricter than the law, one begins with the guidance, and the law's number stays the most that can be set.
/// </remarks>
public static class IntervalRules
{
    private static readonly Phrase Published = $"published";
    private static readonly Phrase SecondHand = $"second hand";
    private static readonly Phrase FromMemory = $"from memory";

    /// <summary>The rule for a case. Where nobody has said whose law counts, it names no months.</summary>
    public static IntervalRule For(IntervalCase asked) => asked.Region switch
    {
        LawRegion.UnitedKingdom => UnitedKingdom(asked),
        LawRegion.Germany => Germany(asked),
        LawRegion.France => France(asked.Use),
        LawRegion.UnitedStates => UnitedStates(asked),
        LawRegion.Australia => Australia(asked),
        LawRegion.EuropeanUnion => None(
            $"The directive asks for an initial, a periodic and a special examination and names no months: the member state and "
            + $"the employer set them.", "Directive 2009/104/EC art. 5", FromMemory),
        _ => None($"Nobody has said whose law counts here.", "", Published),
    };

    private static IntervalRule UnitedKingdom(IntervalCase asked)
    {
        if (asked.Use == LiftingUse.Sling)
            return new(6, 6, true, $"An accessory for lifting: at least every 6 "
                + $"months.", "LOLER 1998 reg. 9(3)(a)(i)", Published);
        if (asked.LiftsPersons)
            return new(6, 6, true, $"It lifts persons: at least every 6 months.", "LOLER 1998 reg. 9(3)(a)(i)", Published);
        return asked is { Use: LiftingUse.Truck, HeavyUse: true }
            ? new(6, 12, true, $"Over 40 h a week, or with an attachment: every 6 months by the trade, at most 12 by the law.",
                "UK trade guidance, second hand; LOLER 1998 reg. 9(3)(a)(ii)", SecondHand)
            : new(12, 12, true, $"At least every 12 months.", "LOLER 1998 reg. 9(3)(a)(ii)", Published);
    }

    private static IntervalRule Germany(IntervalCase asked) => asked.Use switch
    {
        LiftingUse.Truck => new(12, 12, false, $"At least every 12 months.", "DGUV Vorschrift 68 par. 37", Published),
        LiftingUse.Hoist => new(12, 12, false,
            $"At least every 12 months; of a powered hoist the used share of the theoretical life is stated with it.",
            "DGUV Vorschrift 54 par. 23; BetrSichV annex 3", Published),
        _ => asked.HeavyUse
            ? new(6, 12, false,
                $"Heavy use: every 6 months; at most 12. A test for cracks every 3 years, in cargo handling yearly.",
                "BG Bau leaflet on testing; DGUV Regel 109-017", Published)
            : new(12, 12, false, $"At least every 12 months. A test for cracks every 3 years, in cargo handling yearly.",
                "DGUV Regel 109-017; DGUV Vorschrift 36 par. 27", Published),
    };

    private static IntervalRule France(LiftingUse use) => use switch
    {
        LiftingUse.Truck => new(6, 6, false, $"Every 6 months.", "arrêté of 1 March 2004", SecondHand),
        LiftingUse.Hoist => new(12, 12, false, $"Every 12 months; some kinds every 6.", "arrêté of 1 March 2004", SecondHand),
        _ => new(12, 12, false, $"Every 12 months.", "arrêté of 1 March 2004", SecondHand),
    };

    private static IntervalRule UnitedStates(IntervalCase asked) => asked.Use switch
    {
        LiftingUse.Truck => None(
            $"It is inspected daily, or after each shift in round-the-clock use; the months are its maker's.",
            "29 CFR 1910.178(q)(7)", Published),
        LiftingUse.Hoist => new(12, 12, false,
            $"Periodic inspection at most every 12 months; the load chain is inspected monthly with a record beside it. "
            + $"Some states ask for more.", "29 CFR 1910.179(j)", SecondHand),
        _ => asked.HeavyUse
            ? new(1, 12, false, $"Severe service: every 1 to 3 months; at most 12. Some states ask for more.",
                "ASME B30.9, an extract; 29 CFR 1910.184(e)(3)", SecondHand)
            : new(12, 12, false, $"At least every 12 months. Some states ask for more.", "29 CFR 1910.184(e)(3)", Published),
    };

    private static IntervalRule Australia(IntervalCase asked)
    {
        const string Source = "AS 3775 (2014), a guide as listed by a supplier";
        if (asked.Use != LiftingUse.Sling) return None($"No number is kept here for this use.", "", Published);
        if (asked.LiftsPerWeek is not { } lifts)
            return new(1, 1, false, $"By lifts in a week, which are not recorded: every month until then.", Source, SecondHand);
        var months = lifts switch { <= 5 => 12, <= 25 => 6, <= 200 => 3, _ => 1 };
        return new(months, months, false,
            months == 1 ? Phrase.Of($"{lifts} lifts in a week: every month.") : $"{lifts} lifts in a week: every {months} "
                + $"months.",
            Source, SecondHand);
    }

    private static IntervalRule None(Phrase words, string source, Phrase certainty) =>
        new(null, null, false, words, source, certainty);
}
