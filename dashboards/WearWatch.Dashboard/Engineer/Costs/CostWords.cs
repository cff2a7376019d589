using System.Globalization;
using WearWatch.Plant.Costs;

namespace WearWatch.Dashboard.Engineer.Costs;

/// <summary>Amounts of money in words.</summary>
public static class CostWords
{
    /// <summary>An amount such as 1,240 EUR.</summary>
    public static string Money(double amount, CostTerms terms) =>
        string.Create(CultureInfo.InvariantCulture, $"{Figure(amount)} {terms.Costs.Money}");

    /// <summary>The figure of an amount with the digits that matter.</summary>
    public static string Figure(double amount) =>
        amount.ToString(Math.Abs(amount) < 10 ? "0.#" : "#,0", CultureInfo.InvariantCulture);

    /// <summary>The assumptions behind every amount, each with its value.</summary>
    public static IEnumerable<(string What, string Value)> Assumptions(CostTerms terms)
    {
        yield return ("An hour of a stopped line", Money(terms.Costs.StoppedLinePerHour, terms)
            + (terms.Costs.StoppedLinePerHourByLine.Count > 0 ? ", some lines their own" : ""));
        yield return ("A swap stops its line for", string.Create(CultureInfo.InvariantCulture, $"{terms.Costs.StopHours:0.#} h"));
        yield return ("A breakdown stops its line for",
            string.Create(CultureInfo.InvariantCulture, $"{terms.Costs.BreakdownHours:0.#} h"));
        yield return ("A breakdown costs beside that", Money(terms.Costs.BreakdownExtra, terms));
        yield return ("A pitch of chain without a price in the store", Money(terms.UsualPitchPrice, terms));
        yield return ("Sprockets, for a chain that ran past its limit", Money(terms.SprocketPrice, terms));
    }
}
