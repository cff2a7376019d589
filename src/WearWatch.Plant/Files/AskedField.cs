namespace WearWatch.Plant.Files;

/// <summary>How a form asks a person for a field.</summary>
/// <param name="Heading">Under which heading it stands.</param>
/// <param name="Name">Its name.</param>
/// <param name="Unit">Its unit; null for none.</param>
/// <param name="Hint">What to write there, or what holds when it is left out; null for nothing to say.</param>
public sealed record AskedField(Phrase Heading, Phrase Name, Phrase? Unit = null, Phrase? Hint = null)
{
    /// <summary>What can be chosen, the word of the file and the word on the screen; empty where it is written freely.</summary>
    public IReadOnlyList<(string Word, Phrase Text)> Choices { get; init; } = [];
}
