using WearWatch.Chains;
using WearWatch.Learning;

namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>One effect on the wear rate, as it is shown.</summary>
public sealed record DriverLine
{
    /// <summary>Of what.</summary>
    public required Phrase Name { get; init; }

    /// <summary>For which step.</summary>
    public required Phrase Step { get; init; }

    /// <summary>By what the wear rate is multiplied.</summary>
    public required double Factor { get; init; }

    /// <summary>Lower end of its 90 % interval.</summary>
    public required double Low { get; init; }

    /// <summary>Upper end of its 90 % interval.</summary>
    public required double High { get; init; }

    /// <summary>Whether it is surely more than none.</summary>
    public required bool IsDriver { get; init; }

    /// <summary>How many chains bear on it: of the register, of a line or a lot all that were fitted and show a rate.</summary>
    public required int Chains { get; init; }

    public static DriverLine Of(LearnedEffect effect, IReadOnlyCollection<ChainCard> cards)
    {
        var input = DriverInput.Of(effect);
        return new DriverLine
        {
            Name = input.Name,
            Step = input.Step,
            Factor = Math.Pow(effect.Factor, input.Scale),
            Low = Math.Pow(effect.FactorLow, input.Scale),
            High = Math.Pow(effect.FactorHigh, input.Scale),
            IsDriver = effect.IsDriver,
            Chains = effect.Chains ?? cards.Count(input.Tells),
        };
    }
}
