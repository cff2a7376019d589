using System.Text;

namespace WearWatch.Plant.Files;

/// <summary>Tells text from what else is dropped into an inbox, and says so in plain words.</summary>
public static class FileText
{
    private const int Sample = 4096;

    private static readonly (byte[] Start, Phrase Reason)[] NotOurs =
    [
        ([0xFF, 0xFE, 0, 0], $"The file is UTF-32 text. Save it as CSV UTF-8."),
        ([0x50, 0x4B, 0x03, 0x04], $"The file is an archive, or a spreadsheet that cannot be read. "
            + $"Save the sheet as xlsx or as CSV UTF-8."),
        ([0xD0, 0xCF, 0x11, 0xE0], $"The file is an old spreadsheet. Save it as xlsx or as CSV UTF-8."),
        ([0x1F, 0x8B], $"The file is compressed. Unpack it first."),
    ];

    /// <summary>Why the bytes are no text of ours; null when they may be.</summary>
    public static Phrase? WhyNotText(Stream stream)
    {
        var head = new byte[Sample];
        return WhyNotText(head.AsSpan(0, stream.ReadAtLeast(head, Sample, throwOnEndOfStream: false)));
    }

    private static Phrase? WhyNotText(ReadOnlySpan<byte> head)
    {
        if (head.IsEmpty) return $"The file is empty; it needs a header row.";
        foreach (var (start, reason) in NotOurs)
            if (head.StartsWith(start)) return reason;
        return head.Contains((byte)0) && !IsUtf16(head)
            ? Phrase.Of($"The file is not text: it holds zero bytes. Save it as CSV UTF-8.")
            : null;
    }

    private static bool IsUtf16(ReadOnlySpan<byte> head) =>
        head.StartsWith(Encoding.Unicode.Preamble) || head.StartsWith(Encoding.BigEndianUnicode.Preamble);
}
