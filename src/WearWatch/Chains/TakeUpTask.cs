namespace WearWatch.Chains;

/// <summary>What is to be done when a take-up is at its end.</summary>
public enum TakeUpTask
{
    /// <summary>Pitches are taken out and the take-up is set back.</summary>
    Shorten,

    /// <summary>The chain is replaced: it must not be shortened, or that pays no more.</summary>
    Replace,
}
