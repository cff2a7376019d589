using System.Security.Cryptography;
using Microsoft.Extensions.FileProviders;
using WearWatch.Dashboard.Kit.Language;

namespace WearWatch.Dashboard.Technician.Floor;

/// <summary>
/// The files of the floor that a phone keeps, and a name for their state: another build is kept beside the old one, then instead.
/// </summary>
/// <param name="Build">The name: a hash of the files and of the program that draws the document.</param>
/// <param name="Paths">Where they are served.</param>
/// <param name="Sums">The SHA-256 of those that are served as they lie on the disk, by path: a phone keeps no other ones.</param>
public sealed record FloorFiles(string Build, IReadOnlyList<string> Paths, IReadOnlyDictionary<string, string> Sums)
{
    private const string Worker = "floor/sw.js";
    private static readonly string[] folders = ["floor", "floor/lib/qr"];
    private static readonly string[] kept = [".js", ".css", ".webmanifest"];

    /// <summary>Reads them once.</summary>
    public static FloorFiles Of(IFileProvider files)
    {
        List<(string Path, IFileInfo File)> all =
        [
            .. folders.SelectMany(folder => files.GetDirectoryContents(folder).Select(f => ($"{folder}/{f.Name}", f)))
                .Where(f => kept.Contains(Path.GetExtension(f.Item1))).OrderBy(f => f.Item1, StringComparer.Ordinal),
        ];
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(typeof(FloorFiles).Assembly.ManifestModule.ModuleVersionId.ToByteArray());
        var sums = new Dictionary<string, string>();
        foreach (var (path, file) in all)
        {
            using var content = new MemoryStream();
            using (var stream = file.CreateReadStream()) stream.CopyTo(content);
            hash.AppendData(content.ToArray());
            sums["/" + path] = Convert.ToHexStringLower(SHA256.HashData(content.ToArray()));
        }

        // The worker is looked after by the browser itself.
        return new FloorFiles(
            Convert.ToHexStringLower(hash.GetHashAndReset())[..16],
            [
                "/floor/", .. all.Where(f => f.Path != Worker).Select(f => "/" + f.Path),
                .. Tongue.All.Select(l => $"/floor/language/{l.Code}.json"),
            ],
            sums);
    }
}
