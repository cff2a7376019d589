using WearWatch.Dashboard.Kit.Language;
using WearWatch.Lubrication;

namespace WearWatch.Dashboard.Technician.Oiling;

/// <summary>What the plant says of its oiling, as typed, and what is wrong with it.</summary>
public sealed class TermsForm
{
    public string CostOfOiling { get; set; } = "";

    public string CostOfChain { get; set; } = "";

    public string ModerateDust { get; set; } = "";

    public string HeavyDust { get; set; } = "";

    public string Warm { get; set; } = "";

    public string First { get; set; } = "";

    public string PulsesMissed { get; set; } = "";

    /// <summary>What is kept, as a person would type it.</summary>
    public static TermsForm Of(OilTerms terms) => new()
    {
        CostOfOiling = TypedNumber.Text(terms.CostOfOiling),
        CostOfChain = TypedNumber.Text(terms.CostOfChain),
        ModerateDust = TypedNumber.Text(terms.ModerateDustFactor),
        HeavyDust = TypedNumber.Text(terms.HeavyDustFactor),
        Warm = TypedNumber.Text(terms.WarmFactor),
        First = TypedNumber.Text(terms.FirstIntervalFactor),
        PulsesMissed = TypedNumber.Text(terms.PulsesMissed),
    };

    /// <summary>Reads what was typed: the terms, or what is wrong by field.</summary>
    public IReadOnlyDictionary<string, string> Read(out OilTerms terms)
    {
        var faults = new Dictionary<string, string>();
        terms = new OilTerms
        {
            CostOfOiling = Cost("oiling", CostOfOiling),
            CostOfChain = Cost("chain", CostOfChain),
            ModerateDustFactor = Factor("moderate", ModerateDust),
            HeavyDustFactor = Factor("heavy", HeavyDust),
            WarmFactor = Factor("warm", Warm),
            FirstIntervalFactor = Factor("first", First),
            PulsesMissed = TypedNumber.Of(PulsesMissed) is >= 1 and <= 1000 and var missed
                ? missed
                : Fault("pulses", PulsesMissed, $"A number of pulses from 1 on."),
        };
        return faults;

        double? Cost(string field, string text) => text.Trim().Length == 0 ? null
            : TypedNumber.Of(text) is > 0 and <= 1e9 and var cost ? cost
            : Fault(field, text, $"An amount above 0, or nothing.");

        double Factor(string field, string text) => TypedNumber.Of(text) is >= 0.05 and <= 20 and var factor
            ? factor
            : Fault(field, text, $"A factor between {0.05} and 20; {0.5} halves the interval.");

        double Fault(string field, string text, Phrase wanted)
        {
            faults[field] = TypedNumber.Fault(text, wanted);
            return 1;
        }
    }
}
