using System.Text;
using System.Text.RegularExpressions;

namespace WearWatch.Plant.Files;

/// <summary>Recognises how a file is written, from its first rows.</summary>
internal static partial class DialectReader
{
    private const int SampleBytes = 1 << 16;
    private const int SampleRows = 2000;
    private static readonly char[] Separators = [',', ';', '\t'];

    private static readonly HashSet<string> Known =
        [.. FileColumns.Chains.All, .. FileColumns.Readings.All, .. FileColumns.Events.All, .. FileColumns.LinkMeasures.All,
            .. FileColumns.PartReadings.All];

    /// <summary>How a file is written; our own form where nothing tells otherwise.</summary>
    public static FileDialect Read(ImportFile file)
    {
        var choice = file.Choice;
        var dialect = new FileDialect { Letters = choice.CodePage is { } page ? LettersOf(page) : LettersOf(Sample(file)) };
        dialect = dialect with { Separator = choice.Separator ?? SeparatorOf(dialect, file) };
        using var rows = new CsvRowReader(dialect.Open(file), dialect.Separator);
        rows.Next();
        var texts = new List<string>();
        for (var row = 0; row < SampleRows && rows.Next(); row++) texts.AddRange(rows.Fields.Select(f => f.Trim()));
        return dialect with
        {
            DecimalSign = choice.DecimalSign ?? (dialect.Separator == ',' ? '.' : DecimalSignOf(texts)),
            Dates = choice.Dates ?? DatesOf(texts),
        };
    }

    private static byte[] Sample(ImportFile file)
    {
        using var stream = file.Open();
        var bytes = new byte[SampleBytes];
        return bytes[..stream.ReadAtLeast(bytes, SampleBytes, throwOnEndOfStream: false)];
    }

    /// <summary>By the mark at the beginning; without one UTF-8, or Windows-1252 where no letter beyond ASCII is UTF-8.</summary>
    private static Encoding LettersOf(byte[] sample)
    {
        if (sample.AsSpan().StartsWith(Encoding.Unicode.Preamble)) return Encoding.Unicode;
        if (sample.AsSpan().StartsWith(Encoding.BigEndianUnicode.Preamble)) return Encoding.BigEndianUnicode;
        var text = Encoding.UTF8.GetString(sample);
        // A sample may end within a letter; one that is broken inside, without any that is whole, is not UTF-8.
        var isBroken = text.AsSpan(0, Math.Max(0, text.Length - 1)).Contains('\uFFFD');
        return isBroken && !text.Any(c => c > 0x7F && c != '\uFFFD')
            ? LettersOf(1252)
            : Encoding.UTF8;
    }

    private static Encoding LettersOf(int codePage) =>
        CodePagesEncodingProvider.Instance.GetEncoding(codePage) ?? Encoding.GetEncoding(codePage);

    /// <summary>
    /// The one that gives the header most columns that we know; of a header with names of its own, the one by which the first
    /// rows have as many columns as the header.
    /// </summary>
    private static char SeparatorOf(FileDialect dialect, ImportFile file) => Separators.MaxBy(separator =>
    {
        using var rows = new CsvRowReader(dialect.Open(file), separator);
        if (!rows.Next()) return (0, 0);
        var header = rows.Fields;
        var known = header.Count(f => Known.Contains(file.Choice.NameOf(f.Trim())));
        return (known, !rows.Next() || rows.Fields.Count == header.Count ? header.Count : 0);
    });

    private static char? DecimalSignOf(IEnumerable<string> texts)
    {
        var numbers = texts.Where(t => t.AsSpan().ContainsAny('.', ',') && Number().IsMatch(t)).ToArray();
        var (comma, point) = (numbers.Any(n => SignOf(n) == ','), numbers.Any(n => SignOf(n) == '.'));
        return comma && !point ? ',' : comma == point && numbers.Length > 0 ? null : '.';
    }

    /// <summary>The decimal sign that a number must have; null when it may be either.</summary>
    private static char? SignOf(string number)
    {
        var (commas, points) = (number.Count(c => c == ','), number.Count(c => c == '.'));
        if (commas > 0 && points > 0) return number.LastIndexOf(',') > number.LastIndexOf('.') ? ',' : '.';
        var sign = commas > 0 ? ',' : '.';
        if (commas + points > 1) return sign == ',' ? '.' : ',';
        // 1,234 may be either; 0,234 and 1234,567 may not.
        return OneGroup().IsMatch(number) ? null : sign;
    }

    private static DateOrder? DatesOf(IEnumerable<string> texts)
    {
        DateOrder? found = null;
        foreach (var date in texts.Select(t => FileDialect.WrittenDate().Match(t)).Where(m => m.Success))
        {
            if (date.Groups["sign"].Value == "." || int.Parse(date.Groups["first"].Value) > 12) found = DateOrder.DayFirst;
            else if (int.Parse(date.Groups["second"].Value) > 12) return DateOrder.MonthFirst;
        }

        return found;
    }

    [GeneratedRegex(@"^[+-]?\d[\d.,]*$")]
    private static partial Regex Number();

    [GeneratedRegex(@"^[+-]?[1-9]\d{0,2}[.,]\d{3}$")]
    private static partial Regex OneGroup();
}
