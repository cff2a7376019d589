using WearWatch.Phrases;

namespace WearWatch.Wear;

/// <summary>Which elongations a running chain can have.</summary>
/// <remarks>
/// Below -1 % no chain was ever made; above 8 % it has climbed over its sprockets. Common practice; docs/method.md.
/// </remarks>
internal static class Plausible
{
    private const double AbovePercent = -1;
    private const double BelowPercent = 8;

    public static bool Holds(double percent) => percent is > AbovePercent and < BelowPercent;

    public static Phrase WhyNot(double percent) => percent <= AbovePercent
        ? Phrase.Of($"{percent:0.0} % would be shorter than any chain is made. Check count, unit and decimal point.")
        : $"{percent:0.0} % would be off its sprockets long ago. Check count, unit and decimal point.";
}
