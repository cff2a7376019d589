using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using WearWatch.Criteria;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>Every text that the programs may ask a language for, found in their source as the compiler reads it.</summary>
internal static class TextKeys
{
    private const string Phrase = "WearWatch.Phrases.Phrase", Texts = "WearWatch.Dashboard.Kit.Language.Texts";

    /// <summary>The keys, each with the file that has it first.</summary>
    public static IReadOnlyDictionary<string, string> All => found.Value.Keys;

    /// <summary>Those that the domain says, beneath the screens.</summary>
    public static IReadOnlySet<string> OfTheDomain => found.Value.Domain;

    /// <summary>Where a text is asked for that is not known before the program runs, so that nobody can translate it.</summary>
    public static IReadOnlyList<string> NotConstant => found.Value.NotConstant;

    private static readonly Lazy<(Dictionary<string, string> Keys, HashSet<string> Domain, List<string> NotConstant)> found =
        new(Find);

    private static (Dictionary<string, string> Keys, HashSet<string> Domain, List<string> NotConstant) Find()
    {
        Dictionary<string, string> keys = [];
        HashSet<string> domain = [];
        List<string> notConstant = [];
        foreach (var project in SourceProject.All)
        {
            var compilation = project.Compilation;
            foreach (var tree in compilation.SyntaxTrees)
            {
                var model = compilation.GetSemanticModel(tree);
                foreach (var node in tree.GetRoot().DescendantNodes())
                {
                    if (node is ElementAccessExpressionSyntax access) Asked(access);
                    else if (IsPhrase(node)) Add(FormOf((ExpressionSyntax)node));
                }

                void Asked(ElementAccessExpressionSyntax access)
                {
                    if (model.GetSymbolInfo(access).Symbol is not IPropertySymbol property
                        || property.ContainingType.ToDisplayString() != Texts
                        || property.Parameters[0].Type.SpecialType != SpecialType.System_String) return;
                    var asked = access.ArgumentList.Arguments[0].Expression;
                    if (model.GetConstantValue(asked) is { HasValue: true, Value: string text }) Add(text);
                    else notConstant.Add($"{Path.GetFileName(tree.FilePath)}: {access}");
                }

                bool IsPhrase(SyntaxNode node) =>
                    (node is InterpolatedStringExpressionSyntax || IsSumOfTexts(node))
                    && model.GetTypeInfo(node).ConvertedType?.ToDisplayString() == Phrase;

                void Add(string key)
                {
                    keys.TryAdd(key, Path.GetFileName(tree.FilePath));
                    if (project != SourceProject.Dashboard) domain.Add(key);
                }
            }
        }

        // The table of criteria is text of the domain as well, beside its source.
        foreach (var text in LiftingCriteria.All.SelectMany(c => new[] { c.Part, c.Words, c.Unit }).Where(t => !t.IsEmpty))
        {
            keys.TryAdd(text.Form, "criteria.csv");
            domain.Add(text.Form);
        }

        return (keys, domain, notConstant);
    }

    /// <summary>Whether a node adds texts of which one has holes; sums of numbers need not be looked up.</summary>
    private static bool IsSumOfTexts(SyntaxNode node) =>
        node is BinaryExpressionSyntax { RawKind: (int)SyntaxKind.AddExpression }
        && node.DescendantNodes(n => n is BinaryExpressionSyntax).OfType<InterpolatedStringExpressionSyntax>().Any();

    /// <summary>The form as the handler builds it: a numbered hole for each fact, braces of the text doubled.</summary>
    private static string FormOf(ExpressionSyntax phrase)
    {
        var form = new StringBuilder();
        var facts = 0;
        foreach (var content in phrase.DescendantNodesAndSelf(n => n is BinaryExpressionSyntax || n == phrase)
            .OfType<InterpolatedStringExpressionSyntax>().SelectMany(s => s.Contents))
        {
            if (content is InterpolatedStringTextSyntax text)
                form.Append(text.TextToken.ValueText.Replace("{{", "{", StringComparison.Ordinal)
                    .Replace("}}", "}", StringComparison.Ordinal)
                    .Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal));
            else form.Append('{').Append(facts++).Append('}');
        }

        return form.ToString();
    }
}
