using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Bench;

/// <summary>What the bench says to what was asked.</summary>
/// <typeparam name="T">What is worked out.</typeparam>
public abstract record BenchAnswer<T>
{
    private BenchAnswer()
    {
    }

    /// <summary>It was worked out.</summary>
    /// <param name="Result">The figures.</param>
    public sealed record Answered(T Result) : BenchAnswer<T>;

    /// <summary>It could not be worked out.</summary>
    /// <param name="Refusals">What is wrong, by the name it was told under.</param>
    public sealed record Refused(IReadOnlyList<Refusal> Refusals) : BenchAnswer<T>;
}
