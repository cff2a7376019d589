using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Register;

/// <summary>What became of a card that a person wrote.</summary>
public abstract record RegisterAnswer
{
    private RegisterAnswer()
    {
    }

    /// <summary>It is in the register and the chain has been assessed with it.</summary>
    /// <param name="ChainId">Its row.</param>
    /// <param name="Revision">The state of the card now.</param>
    /// <param name="Changes">What was changed; empty when all stood there already.</param>
    public sealed record Kept(int ChainId, int Revision, IReadOnlyList<CardChangeRow> Changes) : RegisterAnswer;

    /// <summary>Not kept: somebody else changed the card in the meantime, and that would have been lost.</summary>
    /// <param name="Now">The card as it is now.</param>
    /// <param name="Since">The newest changes of others, newest first.</param>
    public sealed record Overtaken(ChainRow Now, IReadOnlyList<CardChangeRow> Since) : RegisterAnswer;

    /// <summary>Not kept.</summary>
    /// <param name="Refusals">What is wrong, field by field.</param>
    public sealed record Refused(IReadOnlyList<Refusal> Refusals) : RegisterAnswer;
}
