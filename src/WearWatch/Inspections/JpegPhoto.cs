using System.Buffers.Binary;
using WearWatch.Phrases;

namespace WearWatch.Inspections;

/// <summary>
/// A photo as it is kept: a whole JPEG of reasonable size, without the notes that a camera writes beside the picture.
/// </summary>
/// <remarks>
/// Only the segments that a picture is made of are taken over: where it was taken, by which phone, and whatever else may hide in
/// a file stays out. Segments by ITU-T T.81, from memory.
/// </remarks>
public static class JpegPhoto
{
    /// <summary>Larger files are refused: a phone sends some hundred kilobytes.</summary>
    public const int MostBytes = 2_000_000;

    /// <summary>No phone needs more: a picture is scaled down before it is sent.</summary>
    public const int MostPixelsAcross = 4096;

    private const byte Mark = 0xFF;
    private const byte StartOfPicture = 0xD8;
    private const byte EndOfPicture = 0xD9;
    private const byte StartOfScan = 0xDA;

    /// <summary>The picture to keep, or why it is none.</summary>
    /// <param name="file">What was sent.</param>
    public static (byte[]? Jpeg, Phrase Reason) Read(ReadOnlySpan<byte> file)
    {
        if (file.Length > MostBytes) return (null, $"A photo of more than {MostBytes / 1_000_000} MB; send it smaller.");
        if (file.Length < 4 || file[0] != Mark || file[1] != StartOfPicture || file[^2] != Mark || file[^1] != EndOfPicture)
            return (null, $"This is no whole JPEG picture.");
        var kept = new List<byte>(file.Length) { Mark, StartOfPicture };
        var (at, hasFrame) = (2, false);
        while (at + 4 <= file.Length && file[at] == Mark)
        {
            var kind = file[at + 1];
            var length = BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]) + 2;
            if (length < 4 || at + length > file.Length) return (null, $"The JPEG picture ends within a part of it.");
            if (IsFrame(kind))
            {
                if (length < 9 || Across(file[at..]) is < 1 or > MostPixelsAcross)
                    return (null, $"A picture has 1 to {MostPixelsAcross} pixels across and down.");
                hasFrame = true;
            }

            if (kind == StartOfScan) return hasFrame ? ([.. kept, .. file[at..]], Phrase.None) : (null, $"The JPEG picture has "
                + $"no size.");
            if (IsPartOfPicture(kind)) kept.AddRange(file.Slice(at, length));
            at += length;
        }

        return (null, $"The JPEG picture has no content.");
    }

    /// <summary>The larger of width and height; zero when one of them is.</summary>
    private static int Across(ReadOnlySpan<byte> frame)
    {
        var (height, width) =
            (BinaryPrimitives.ReadUInt16BigEndian(frame[5..]), BinaryPrimitives.ReadUInt16BigEndian(frame[7..]));
        return Math.Min(height, width) == 0 ? 0 : Math.Max(height, width);
    }

    private static bool IsFrame(byte kind) => kind is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC);

    /// <summary>
    /// Frames, tables of numbers and the restart interval; not the application's and not the comment's segments.
    /// </summary>
    private static bool IsPartOfPicture(byte kind) => IsFrame(kind) || kind is 0xC4 or 0xCC or 0xDB or 0xDD;
}
