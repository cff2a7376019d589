using WearWatch.Chains;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>A note is for people: code keeps and shows it, and concludes nothing. A fact has a field of its own.</summary>
public sealed class NoteTests
{
    private static readonly Type[] HaveNotes = [typeof(ChainEvent), typeof(EventRow), typeof(ReadingRow)];

    /// <summary>Who keeps and carries them.</summary>
    private static readonly string[] Keep =
        ["ChainEvent", "NewEvent", "EventRow", "EntryRows", "Fingerprint", "EntryCheck", "EventColumns"];

    /// <summary>Who shows them to a person.</summary>
    private static readonly string[] Show = ["EventPanel", "ChangesQuery", "ReadingTable"];

    [Fact]
    public void Nobody_reads_a_note_but_to_keep_it_or_to_show_it()
    {
        var notes = HaveNotes.Select(t => t.GetProperty("Note")!.GetMethod!).ToHashSet();
        var readers =
            from assembly in TypeGraph.Ours
            from type in assembly.GetTypes()
            where Code.CallsOf(type).Any(notes.Contains)
            select Home(type).Name;
        Assert.Equal(Keep.Concat(Show).Order(StringComparer.Ordinal), readers.Distinct().Order(StringComparer.Ordinal));
    }

    private static Type Home(Type type) => type.DeclaringType is { } outer ? Home(outer) : type;
}
