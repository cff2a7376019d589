using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using WearWatch.Dashboard.Tests.Architecture;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>A project as the compiler sees it: its files, and what the build made of its pages.</summary>
internal sealed record SourceProject(string Name, CSharpCompilation Compilation)
{
    private static readonly CSharpParseOptions options = new(LanguageVersion.Preview);

    /// <summary>The projects whose sentences people read on screens.</summary>
    public static IReadOnlyList<SourceProject> All { get; } =
    [
        Read("src/WearWatch"), Read("src/WearWatch.Learning"), Read("src/WearWatch.Planning"), Read("src/WearWatch.Plant"),
        Read("src/WearWatch.Worker"), Read("dashboards/WearWatch.Dashboard"),
    ];

    /// <summary>The dashboard.</summary>
    public static SourceProject Dashboard => All[^1];

    /// <summary>What the build made of a page: its drawing in C#.</summary>
    public static bool IsDrawing(SyntaxTree tree) => tree.FilePath.EndsWith("_razor.g.cs", StringComparison.Ordinal);

    private static SourceProject Read(string folder)
    {
        var name = Path.GetFileName(folder);
        var made = Path.Combine(SourceTree.Root, "artifacts", "obj", name, Build());
        var files = SourceTree.Files([folder], ".cs")
            .Concat(Directory.EnumerateFiles(made, "*.GlobalUsings.g.cs"))
            .Concat(Directory.Exists(Path.Combine(made, "generated"))
                ? Directory.EnumerateFiles(Path.Combine(made, "generated"), "*.cs", SearchOption.AllDirectories)
                : []);
        return new(name, CSharpCompilation.Create(
            name,
            files.Select(f => CSharpSyntaxTree.ParseText(File.ReadAllText(f), options, f)),
            References(name),
            // What may be null is for the build to say; asked again here, it would take most of the time.
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary)));
    }

    // The build of the tests is the build of the programs.
    private static string Build() => new DirectoryInfo(AppContext.BaseDirectory).Name;

    private static IEnumerable<MetadataReference> References(string without) =>
        from file in ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
        where Path.GetFileNameWithoutExtension(file) != without
        select MetadataReference.CreateFromFile(file);
}
