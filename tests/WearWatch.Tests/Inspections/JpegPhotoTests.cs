using System.Text;
using WearWatch.Inspections;

namespace WearWatch.Tests.Inspections;

/// <summary>Segments put together by hand after ITU-T T.81: marker, length with its own two bytes, content.</summary>
public sealed class JpegPhotoTests
{
    private static readonly byte[] Start = [0xFF, 0xD8];
    private static readonly byte[] Camera = [0xFF, 0xE1, 0x00, 0x0A, .. "Exif-GPS"u8];
    private static readonly byte[] Table = [0xFF, 0xDB, 0x00, 0x04, 1, 2];
    private static readonly byte[] Comment = [0xFF, 0xFE, 0x00, 0x06, .. "<s>!"u8];
    private static readonly byte[] Scan = [0xFF, 0xDA, 0x00, 0x04, 1, 1, 7, 7, 7, 0xFF, 0xD9];

    [Fact]
    public void A_picture_is_kept_without_what_the_camera_wrote_beside_it()
    {
        var (kept, reason) = JpegPhoto.Read([.. Start, .. Camera, .. Table, .. Frame(640, 480), .. Comment, .. Scan]);
        Assert.Equal("", reason.ToString());
        Assert.Equal([.. Start, .. Table, .. Frame(640, 480), .. Scan], kept!);
    }

    public static TheoryData<byte[], string> NoPictures => new()
    {
        { Encoding.ASCII.GetBytes("<html><script>alert(1)</script></html>"), "no whole JPEG" },
        { [.. Start, .. Frame(640, 480), .. Scan[..^2]], "no whole JPEG" },
        { [.. Start, .. Scan], "no size" },
        { [.. Start, .. Frame(0, 480), .. Scan], "pixels" },
        { [.. Start, .. Frame(640, 65000), .. Scan], "pixels" },
        { [.. Start, 0xFF, 0xDB, 0xFF, 0xFF, 0xFF, 0xD9], "ends within" },
        { [.. Start, 0xFF, 0xD9], "no content" },
        { new byte[JpegPhoto.MostBytes + 1], "more than 2 MB" },
    };

    [Theory]
    [MemberData(nameof(NoPictures))]
    public void What_is_no_picture_is_refused_and_says_why(byte[] file, string reason)
    {
        var (kept, why) = JpegPhoto.Read(file);
        Assert.Null(kept);
        Assert.Contains(reason, why.ToString(), StringComparison.Ordinal);
    }

    private static byte[] Frame(int width, int height) =>
        [0xFF, 0xC0, 0x00, 0x0B, 8, (byte)(height >> 8), (byte)height, (byte)(width >> 8), (byte)width, 1, 1, 0x11, 0];
}
