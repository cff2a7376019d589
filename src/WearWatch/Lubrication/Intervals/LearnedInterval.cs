using WearWatch.Phrases;

namespace WearWatch.Lubrication.Intervals;

/// <summary>What a plant's own history says of the interval between oilings.</summary>
public abstract record LearnedInterval
{
    private LearnedInterval(IntervalData data) => Data = data;

    /// <summary>What stands behind it.</summary>
    public IntervalData Data { get; }

    /// <summary>Too little is recorded to say anything: the handbook's interval stays.</summary>
    /// <param name="Data">What there is.</param>
    /// <param name="Why">What is missing, in words.</param>
    public sealed record TooLittle(IntervalData Data, Phrase Why) : LearnedInterval(Data);

    /// <summary>Wear does not show that it rises with the age of the oil: the handbook's interval stays.</summary>
    /// <param name="Data">What stands behind it.</param>
    /// <param name="Share">Share of today's wear that the ageing of the oil makes: the best guess, which may be chance.</param>
    /// <param name="ShareLow">Lower end of its 90 % interval.</param>
    /// <param name="ShareHigh">Upper end of its 90 % interval: more than this it hardly is.</param>
    public sealed record NoEffect(IntervalData Data, double Share, double ShareLow, double ShareHigh) : LearnedInterval(Data);

    /// <summary>Wear rises with the age of the oil.</summary>
    /// <param name="Data">What stands behind it.</param>
    /// <param name="Share">Share of today's wear that the ageing of the oil makes.</param>
    /// <param name="ShareLow">Lower end of its 90 % interval.</param>
    /// <param name="ShareHigh">Upper end of its 90 % interval.</param>
    /// <param name="Best">The interval of least cost; null while the plant has set no costs.</param>
    public sealed record Effect(IntervalData Data, double Share, double ShareLow, double ShareHigh, BestInterval? Best)
        : LearnedInterval(Data);
}
