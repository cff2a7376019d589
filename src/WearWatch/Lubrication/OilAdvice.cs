using WearWatch.Chains;
using WearWatch.Phrases;
using WearWatch.Units;

namespace WearWatch.Lubrication;

/// <summary>How, with what and how much a chain is to be oiled, by the trade's tables.</summary>
public sealed record OilAdvice
{
    /// <summary>How; null without a chain speed.</summary>
    public required OilFeed? Feed { get; init; }

    /// <summary>With what; null without a temperature, or outside of the table.</summary>
    public required OilGrade? Grade { get; init; }

    /// <summary>How much; null without a chain speed.</summary>
    public required OilAmount? Amount { get; init; }

    /// <summary>How it is oiled now; null when that is not recorded.</summary>
    public required OilMethod? Fitted { get; init; }

    /// <summary>What its place or its material forbids or asks, most urgent first.</summary>
    public required IReadOnlyList<OilCaution> Cautions { get; init; }

    /// <summary>What is missing on the card for an answer, in words.</summary>
    public required IReadOnlyList<Phrase> Missing { get; init; }

    /// <summary>The temperature of the surroundings where it is above all that the tables cover; null else.</summary>
    public double? TooHotC { get; init; }

    /// <summary>
    /// Why it must not be oiled so, or why the way it is oiled does not do at its speed; null when it does or nobody can tell.
    /// </summary>
    public Phrase? Warning => TooHotC is { } hot
        ? $"At {hot:0} °C no oil of these tables may be used: mind its flash point, hot surfaces "
            + $"and an explosive atmosphere. Let it cool before a hand goes near, and ask the maker of the oil."
        : Feed is { } feed && Fitted is { } method && !feed.IsEnough(method)
        ? Phrase.Of($"At this speed the chain needs {feed.Text}: what it has, {Name(method)}, is too little.")
        : null;

    /// <summary>The advice for a chain.</summary>
    /// <param name="card">Its card, with what its position has shown of the temperature.</param>
    public static OilAdvice For(ChainCard card)
    {
        var speed = card.Duty.SpeedMetresPerSecond;
        var ambient = card.Duty.AmbientC;
        var cautions = OilCaution.For(card);
        var isSilent = cautions.Any(c => c.StopsTables);
        var covered = ambient is { } c ? card.Family.OilFor(new Temperature(c))?.BesideSize(card, new Temperature(c)) : null;
        var grade = isSilent ? null : covered;
        var tooHot = covered is null && ambient > OilGrade.Highest.Celsius ? ambient : null;
        var feed = speed is { } v && tooHot is null && !isSilent && !card.HoldsLoad
            ? OilFeed.For(card.Family, card.PitchMm, new Speed(v))
            : null;
        return new OilAdvice
        {
            Feed = feed,
            Grade = grade,
            Cautions = cautions,
            Amount = isSilent || tooHot is not null || (ambient is not null && covered is null) ? null
                : card.HoldsLoad ? OilAmount.OfLifting
                : feed is null ? null
                : OilAmount.For(feed.Kind, card.Strands),
            TooHotC = tooHot,
            Fitted = card.OilMethod,
            Missing =
            [
                .. speed is null && !card.HoldsLoad ? [$"the chain speed, for how"] : Array.Empty<Phrase>(),
                .. ambient is null ? [$"the temperature of the surroundings, for with what"] : Array.Empty<Phrase>(),
                .. ambient is not null && covered is null
                    ? [$"no table covers this temperature: ask the maker of the oil"]
                    : Array.Empty<Phrase>(),
            ],
        };
    }

    private static Phrase Name(OilMethod method) => method switch
    {
        OilMethod.Hand => $"lubrication by hand",
        OilMethod.Drip => $"a drip feed",
        OilMethod.Bath => $"a bath",
        OilMethod.Lubricator => $"an automatic lubricator that gives drops",
        _ => $"an oil stream",
    };
}
