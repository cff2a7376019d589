using CsvHelper;

namespace WearWatch.Plant.Files;

/// <summary>The rows of a CSV file (RFC 4180), each with its line.</summary>
/// <remarks>
/// One thing of RFC 4180 is not taken: line breaks inside a quoted field. No column of ours needs them, and so a quotation mark
/// that was never closed spoils one row and not the rest of the file.
/// </remarks>
public sealed class CsvRowReader : IDisposable
{
    /// <summary>Longer rows are none of ours: the file is something else.</summary>
    public const int LongestRow = 100_000;

    private readonly CsvReader reader;
    private CsvMalformedReason? broken;

    /// <summary>Begins at the first row of a file, which it closes with itself.</summary>
    /// <param name="stream">Its bytes, UTF-8.</param>
    /// <param name="separator">What stands between the columns.</param>
    public CsvRowReader(Stream stream, char separator = ',') => reader = CsvReader.Create(stream, new CsvReaderOptions
    {
        Separator = separator,
        HasHeader = false,
        TrackLineNumbers = true,
        AllowLineBreaksInQuotes = false,
        MaxRecordSize = LongestRow,
        MalformedData = CsvMalformedDataHandling.Recover,
        OnMalformedRecord = record => broken = record.Reason,
    });

    /// <summary>The line of the row, from 1.</summary>
    public int Line { get; private set; } = 1;

    /// <summary>The fields of the row as they are written.</summary>
    public IReadOnlyList<string> Fields { get; private set; } = [];

    /// <summary>What is wrong with the row as a row; null when nothing is.</summary>
    public Phrase? WhyBroken => broken switch
    {
        null => Fields.Any(f => f.Contains('\uFFFD') || f.Contains('\0'))
            ? Phrase.Of($"Characters that are not UTF-8. Save the file as CSV UTF-8.")
            : null,
        CsvMalformedReason.LineBreakInQuotes or CsvMalformedReason.UnterminatedQuote =>
            $"A quotation mark that is not closed in this line.",
        _ => $"A quotation mark where none may stand; inside a quoted field write it twice.",
    };

    /// <summary>
    /// Whether the end was reached at a row longer than <see cref="LongestRow"/>, behind which no row can be told.
    /// </summary>
    public bool IsCutOff { get; private set; }

    /// <summary>Goes to the next row that is not blank; false at the end.</summary>
    public bool Next()
    {
        broken = null;
        try
        {
            if (!reader.Read()) return false;
        }
        catch (CsvFormatException)
        {
            IsCutOff = true;
            return false;
        }

        Line = (int)reader.LineNumber;
        Fields = reader.Current.ToArray();
        return true;
    }

    /// <inheritdoc/>
    public void Dispose() => reader.Dispose();
}
