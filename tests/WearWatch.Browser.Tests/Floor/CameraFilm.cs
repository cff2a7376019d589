using System.Text;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What a camera sees: a code held before it in a hand that is not still, in the light of a hall.</summary>
internal sealed class CameraFilm : IDisposable
{
    private const int Width = 640;
    private const int Height = 480;
    private const int Frames = 8;

    private readonly string folder = Directory.CreateTempSubdirectory("wearwatch-film-").FullName;

    /// <summary>The film: frames of a luma plane and two quarter-sized planes without colour (YUV4MPEG2, 4:2:0).</summary>
    public string Path => System.IO.Path.Combine(folder, "label.y4m");

    /// <summary>Films a drawing.</summary>
    /// <param name="page">Any page: its canvas draws.</param>
    /// <param name="svg">The code.</param>
    public async Task ShootAsync(IPage page, string svg)
    {
        await using var film = File.Create(Path);
        film.Write(Encoding.ASCII.GetBytes($"YUV4MPEG2 W{Width} H{Height} F10:1 Ip A1:1 C420jpeg\n"));
        var colourless = Enumerable.Repeat((byte)128, Width * Height / 2).ToArray();
        for (var frame = 0; frame < Frames; frame++)
        {
            var luma = await page.EvaluateAsync<string>(Drawing, new { svg, frame, width = Width, height = Height });
            film.Write("FRAME\n"u8);
            film.Write(Convert.FromBase64String(luma));
            film.Write(colourless);
        }
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private const string Drawing = """
        async ({ svg, frame, width, height }) => {
          const picture = new Image();
          const sized = svg.replace('<svg', '<svg width="600" height="600"');
          picture.src = `data:image/svg+xml;base64,${btoa(sized)}`;
          await picture.decode();
          const pen = new OffscreenCanvas(width, height).getContext('2d');
          pen.fillStyle = '#6b6f72';
          pen.fillRect(0, 0, width, height);
          pen.translate(width / 2 + 4 * frame, height / 2 - 2 * frame);
          pen.rotate((frame - 3) * 0.04);
          pen.drawImage(picture, -160, -160, 320, 320);
          const { data } = pen.getImageData(0, 0, width, height);
          const luma = new Uint8Array(width * height);
          // The hall is dim on one side.
          for (let i = 0; i < luma.length; i++) luma[i] = 40 + data[4 * i] * (0.5 + 0.25 * (i % width) / width);
          let text = '';
          for (let i = 0; i < luma.length; i += 0x8000) text += String.fromCharCode(...luma.subarray(i, i + 0x8000));
          return btoa(text);
        }
        """;
}
