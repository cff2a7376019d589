namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>A row that belongs to a chain, with the chain's name.</summary>
internal sealed record OfChain<T>(T Row, string Chain);

/// <summary>The two columns with which nearly every table begins.</summary>
internal static class OfChain
{
    public const string IdMeaning = "number of the row; rises with time and is never used again";
    public const string ChainMeaning = "name of the chain's position on the label";

    public static HistoryShape<OfChain<T>> Shape<T>(Func<T, long> id) =>
        new HistoryShape<OfChain<T>>().Whole("id", IdMeaning, x => id(x.Row)).Text("chain", ChainMeaning, x => x.Chain);
}
