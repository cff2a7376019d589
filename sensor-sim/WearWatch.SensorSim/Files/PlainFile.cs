using System.Text;

namespace WearWatch.SensorSim.Files;

/// <summary>Writes a text file in UTF-8 without a byte order mark, on every system alike.</summary>
internal static class PlainFile
{
    /// <summary>Writes a file, in the place of one of that name.</summary>
    public static void Write(string path, Action<TextWriter> write)
    {
        using var writer = new StreamWriter(path, append: false, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        write(writer);
    }
}
