namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>A row that belongs to a chain, with the chain's name.</summary>
/// <param name="Row">The row.</param>
/// <param name="Chain">The chain's name.</param>
/// <param name="HoldsLoad">Whether the chain lifts or holds a load, where the table asks for it.</param>
internal sealed record OfChain<T>(T Row, string Chain, bool HoldsLoad = false);

/// <summary>The two columns with which nearly every table begins.</summary>
internal static class OfChain
{
    public static readonly Phrase IdMeaning = $"number of the row; rises with time and is never used again";
    public static readonly Phrase ChainMeaning = $"name of the chain's position on the label";

    public static HistoryShape<OfChain<T>> Shape<T>(Func<T, long> id) =>
        new HistoryShape<OfChain<T>>().Whole("id", IdMeaning, x => id(x.Row)).Text("chain", ChainMeaning, x => x.Chain);
}
