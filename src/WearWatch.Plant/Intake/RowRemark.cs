namespace WearWatch.Plant.Intake;

/// <summary>How a remark weighs.</summary>
public enum RemarkKind
{
    /// <summary>The row was not taken.</summary>
    Refused,

    /// <summary>The row is kept and waits for a person.</summary>
    Waiting,

    /// <summary>The row was taken all the same.</summary>
    Warning,
}

/// <summary>Something to say about a row of a file.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Line">The line in it, from 1, as an editor counts; 0 for the file as a whole.</param>
/// <param name="Column">The column's name; empty for the row as a whole.</param>
/// <param name="Reason">What is wrong and what would do.</param>
/// <param name="Kind">How it weighs.</param>
public sealed record RowRemark(string File, int Line, string Column, Phrase Reason, RemarkKind Kind)
{
    /// <summary>The remark as a line of text: <c>file:line: column: reason</c>.</summary>
    public Phrase InFull => Phrase.Join("",
    [
        Phrase.Verbatim(FormattableString.Invariant($"{File}:{Line}: {(Column.Length > 0 ? Column + ": " : "")}")), Reason,
    ]);

    /// <summary>The line in English.</summary>
    public override string ToString() => InFull.ToString();
}
