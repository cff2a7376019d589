using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>A language is one folder: nothing else has to know of it.</summary>
public sealed class LanguageFolderTests : IDisposable
{
    private static readonly string languages =
        Path.Combine(SourceTree.Root, "dashboards", "WearWatch.Dashboard", "Languages");

    private readonly string root = Directory.CreateTempSubdirectory("wearwatch-languages-").FullName;

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void A_folder_more_is_a_language_more_with_its_name_its_figures_and_its_texts()
    {
        foreach (var code in new[] { "en", "de" }) Copy(code, code, text => text);
        Copy("es", "fr", text => text.Replace("\"Espa\u00f1ol\"", "\"Fran\u00e7ais\"", StringComparison.Ordinal)
            .Replace("\"Guardado.\"", "\"Enregistr\u00e9.\"", StringComparison.Ordinal));
        var found = Tongue.In(
            [.. Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(root, f))],
            name => File.OpenRead(Path.Combine(root, name)));
        Assert.Equal(["en", "de", "fr"], found.Select(l => l.Code));
        var french = found[^1];
        Assert.Equal(("Fran\u00e7ais", "A4", "Enregistr\u00e9."), (french.Name, french.Paper, french.Text("Saved.")));
        Assert.Equal("1,5", 1.5.ToString(french.Culture));
        Assert.Equal(Tongue.Of("es")!.Texts.Count, french.Texts.Count);
    }

    [Fact]
    public void No_source_names_a_language_but_the_one_whose_texts_are_the_keys()
    {
        var others = Tongue.All.Where(l => l != Tongue.English).Select(l => $"\"{l.Code}\"").ToList();
        var found = from file in SourceTree.Files(["src", "dashboards"], ".cs", ".razor", ".js")
                    from line in File.ReadLines(file)
                    where others.Any(code => line.Contains(code, StringComparison.Ordinal)
                        || line.Contains(code.Replace('"', '\''), StringComparison.Ordinal))
                    select $"{Path.GetFileName(file)}: {line.Trim()}";
        Assert.Empty(found.ToList());
    }

    private void Copy(string from, string to, Func<string, string> changed)
    {
        var folder = Directory.CreateDirectory(Path.Combine(root, "Languages", to)).FullName;
        foreach (var file in Directory.EnumerateFiles(Path.Combine(languages, from)))
            File.WriteAllText(Path.Combine(folder, Path.GetFileName(file)), changed(File.ReadAllText(file)));
    }
}
