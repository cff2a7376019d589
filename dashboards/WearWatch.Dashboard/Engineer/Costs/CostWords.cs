using System.Globalization;
using WearWatch.Plant.Costs;

namespace WearWatch.Dashboard.Engineer.Costs;

/// <summary>Amounts of money in words.</summary>
public static class CostWords
{
    /// <summary>An amount such as 1,240 EUR.</summary>
    public static string Money(double amount, CostTerms terms) =>
        $"{Figure(amount)} {terms.Costs.Money}";

    /// <summary>The figure of an amount with the digits that matter.</summary>
    public static string Figure(double amount) =>
        amount.ToString(Math.Abs(amount) < 10 ? "0.#" : "#,0", CultureInfo.CurrentCulture);

    /// <summary>What the swaps of a period spared, by probability.</summary>
    public static Phrase Spared(CostStatement sheet, CostTerms terms) =>
        $"{EngineerWords.Swaps(sheet.Early)} came before a breakdown. By probability they spared {sheet.Spared:0.0} "
        + $"breakdowns ({sheet.SparedInterval.Low:0.0} to {sheet.SparedInterval.High:0.0}), which would have cost "
        + $"{Money(sheet.Saved, terms)} more.";

    /// <summary>The assumptions behind every amount, each with its value.</summary>
    public static IEnumerable<(Phrase What, Phrase Value)> Assumptions(CostTerms terms)
    {
        var anHour = Money(terms.Costs.StoppedLinePerHour, terms);
        yield return ($"An hour of a stopped line", terms.Costs.StoppedLinePerHourByLine.Count > 0
            ? Phrase.Of($"{anHour}, some lines their own")
            : $"{anHour}");
        yield return ($"A swap stops its line for", $"{terms.Costs.StopHours:0.#} h");
        yield return ($"A breakdown stops its line for", $"{terms.Costs.BreakdownHours:0.#} h");
        yield return ($"A breakdown costs beside that", $"{Money(terms.Costs.BreakdownExtra, terms)}");
        yield return ($"A pitch of chain without a price in the store", $"{Money(terms.UsualPitchPrice, terms)}");
        yield return ($"Sprockets, for a chain that ran past its limit", $"{Money(terms.SprocketPrice, terms)}");
    }
}
