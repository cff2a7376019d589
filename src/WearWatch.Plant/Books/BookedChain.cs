using WearWatch.Chains;

namespace WearWatch.Plant.Books;

/// <summary>A chain of the register with the lives of all that ran at its position.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Card">Its card as it stands now; earlier lives may have run under another duty, of which nothing is kept.</param>
/// <param name="LimitPercent">The limit that its lives are held against.</param>
/// <param name="Lives">The lives in order; the last is that of the chain that runs now.</param>
public sealed record BookedChain(int Id, ChainCard Card, double LimitPercent, IReadOnlyList<BookedLife> Lives)
{
    /// <summary>The card of the chain of one of its lives.</summary>
    public ChainCard CardOf(BookedLife life) => Card with { Lot = life.Lot };
}
