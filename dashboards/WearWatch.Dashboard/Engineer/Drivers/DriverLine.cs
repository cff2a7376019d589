using WearWatch.Chains;
using WearWatch.Learning;

namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>One effect on the wear rate, as it is shown.</summary>
/// <param name="Name">Of what.</param>
/// <param name="Step">For which step.</param>
/// <param name="Factor">By what the wear rate is multiplied.</param>
/// <param name="Low">Lower end of its 90 % interval.</param>
/// <param name="High">Upper end of its 90 % interval.</param>
/// <param name="IsDriver">Whether it is surely more than none.</param>
/// <param name="Chains">
/// How many chains bear on it: of the register, of a line or a lot all that were fitted and show a rate.
/// </param>
public sealed record DriverLine(string Name, string Step, double Factor, double Low, double High, bool IsDriver, int Chains)
{
    public static DriverLine Of(LearnedEffect effect, IReadOnlyCollection<ChainCard> cards)
    {
        var input = DriverInput.Of(effect);
        return new(
            input.Name, input.Step, Math.Pow(effect.Factor, input.Scale), Math.Pow(effect.FactorLow, input.Scale),
            Math.Pow(effect.FactorHigh, input.Scale), effect.IsDriver, effect.Chains ?? cards.Count(input.Tells));
    }
}
