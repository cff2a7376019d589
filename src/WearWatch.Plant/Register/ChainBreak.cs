namespace WearWatch.Plant.Register;

/// <summary>That a chain broke before it was replaced: events have no field for it, so it leads the note, and only here.</summary>
public static class ChainBreak
{
    private const string Words = "the old chain broke";

    /// <summary>The note of a replacement: <c>the old chain broke; what else was said</c>.</summary>
    public static string Write(string more) => more.Trim().Length > 0 ? $"{Words}; {more.Trim()}" : Words;

    /// <summary>Whether a note tells it.</summary>
    public static bool IsTold(string note) => note.Split(';', 2)[0].Trim() == Words;
}
