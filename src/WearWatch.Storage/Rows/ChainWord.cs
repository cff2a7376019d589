namespace WearWatch.Storage.Rows;

/// <summary>A foreign word for a chain.</summary>
/// <param name="Word">As it stands in the topic.</param>
/// <param name="Chain">The chain's name here.</param>
public sealed record ChainWord(string Word, string Chain);
