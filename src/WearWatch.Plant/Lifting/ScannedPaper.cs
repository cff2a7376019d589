using WearWatch.Inspections;

namespace WearWatch.Plant.Lifting;

/// <summary>A scanned paper as it is kept: a PDF, or a JPEG without what a camera writes beside it.</summary>
public static class ScannedPaper
{
    /// <summary>Larger files are refused: a certificate of some pages has some hundred kilobytes.</summary>
    public const int MostBytes = 5_000_000;

    /// <summary>A PDF.</summary>
    public const string Pdf = "application/pdf";

    /// <summary>A JPEG picture.</summary>
    public const string Jpeg = "image/jpeg";

    private const int TailBytes = 1024; // a PDF ends with its mark within its last 1,024 bytes: ISO 32000-1 annex H, from memory

    /// <summary>What to keep with its type, or why it is kept not.</summary>
    public static (byte[]? Content, string Type, Phrase Reason) Read(byte[] file)
    {
        if (file.Length > MostBytes) return (null, "", $"A file of more than {MostBytes / 1_000_000} MB; scan it smaller.");
        if (file.AsSpan().StartsWith("%PDF-"u8))
            return file.AsSpan(Math.Max(0, file.Length - TailBytes)).IndexOf("%%EOF"u8) >= 0
                ? (file, Pdf, Phrase.None)
                : (default(byte[]), "", Phrase.Of($"The PDF file ends before its end."));
        var (jpeg, reason) = JpegPhoto.Read(file);
        return jpeg is null ? (null, "", $"Neither a PDF nor a JPEG that can be kept. {reason}") : (jpeg, Jpeg, Phrase.None);
    }
}
