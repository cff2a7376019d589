using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>How long the sprockets of a position have run, by its events: it decides with a swap whether they go, too.</summary>
/// <param name="FittedAt">When they were replaced last; null where no replacement is recorded.</param>
/// <param name="ChainsRun">How many chains have run on them since, the one that runs now among them.</param>
public sealed record SprocketHistory(DateTimeOffset? FittedAt, int ChainsRun)
{
    /// <summary>From so many chains on new sprockets are to lie ready. Common practice.</summary>
    public const int ManyChains = 3;

    /// <summary>Whether their teeth, as measured, are worn so far that they go with the chain.</summary>
    public bool AreWorn { get; init; }

    /// <summary>Whether new sprockets are to lie ready at the next swap.</summary>
    public bool AreToLieReady => AreWorn || ChainsRun >= ManyChains;

    /// <summary>The record of a position.</summary>
    /// <param name="card">Its chain's card.</param>
    /// <param name="events">Its events, in the order in which they happened.</param>
    public static SprocketHistory Of(ChainCard card, IReadOnlyList<ChainEvent> events)
    {
        var all = events.ToList();
        var fitted = all.FindLastIndex(e => e.Kind == ChainEventKind.SprocketReplaced);
        // The fitting that the card tells may stand among the events, too.
        var swaps = all.Skip(fitted + 1).Count(e => IsSwap(e) && (e.At is null || e.At != card.FittedAt));
        // Of one stop the chain may be recorded before the sprocket or after it: it runs on the new one either way.
        if (fitted >= 0 && all[fitted].At is { } at) swaps -= all.Skip(fitted + 1).Count(e => IsSwap(e) && e.At == at);
        return new SprocketHistory(fitted < 0 ? null : all[fitted].At, swaps + 1);
    }

    /// <summary>What it says, in words; with the date in the words of whoever shows it.</summary>
    /// <param name="day">The date in words; empty where none is recorded.</param>
    public Phrase Words(string day) => AreWorn
        ? Phrase.Of($"{Runs(day)} Their teeth are worn: they go with the chain.")
        : Runs(day);

    private Phrase Runs(string day) => day.Length > 0
        ? Phrase.Counted(
            ChainsRun, $"{ChainsRun} chain has run on them since {day}.", $"{ChainsRun} chains have run on them since {day}.")
        : Phrase.Counted(
            ChainsRun, $"{ChainsRun} chain has run on them; when they were fitted is not recorded.",
            $"{ChainsRun} chains have run on them; when they were fitted is not recorded.");

    private static bool IsSwap(ChainEvent happened) => happened.Kind == ChainEventKind.Replacement;
}
