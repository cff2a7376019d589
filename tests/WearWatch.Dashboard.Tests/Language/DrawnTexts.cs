using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace WearWatch.Dashboard.Tests.Language;

/// <summary>Texts that a page draws as they stand in its file: nobody can say them in another language.</summary>
internal static partial class DrawnTexts
{
    /// <summary>Attributes of elements, and parameters of our parts, that people read.</summary>
    private static readonly HashSet<string> read = new(StringComparer.Ordinal)
    {
        "title", "aria-label", "placeholder", "alt",
        "Heading", "Label", "Hint", "What", "Text", "Placeholder", "Title", "Word",
    };

    /// <summary>What is the same in every language: units, formats of files, names.</summary>
    private static readonly HashSet<string> same = new(StringComparer.Ordinal)
    {
        "WearWatch", "h", "mm", "cm", "m", "s", "min", "kN", "N", "kW", "W", "ml", "l", "kg", "g", "in", "ft", "hp", "C", "F",
            "rpm",
            "ppm",
            "Hz", "d",
        "CSV", "xlsx", "PDF", "SVG", "PNG", "JSON", "Parquet", "ics", "csv", "B10", "PIN", "MQTT", "API", "Authorization",
            "Bearer", "R", "t", "p", "x",
            "U", "u", "n",
    };

    /// <summary>Each with its page.</summary>
    public static IReadOnlyList<string> BesideTheLanguages() =>
    [
        .. from tree in SourceProject.Dashboard.Compilation.SyntaxTrees
           where SourceProject.IsDrawing(tree)
           from call in tree.GetRoot().DescendantNodes().OfType<InvocationExpressionSyntax>()
           from text in Drawn(call)
           where Word().Matches(text).Any(w => !same.Contains(w.Value))
           select $"{Path.GetFileName(tree.FilePath)}: {text.Trim()}",
    ];

    private static IEnumerable<string> Drawn(InvocationExpressionSyntax call)
    {
        if (call.Expression is not MemberAccessExpressionSyntax { Name: var method }) yield break;
        var arguments = call.ArgumentList.Arguments;
        switch (method.Identifier.Text)
        {
            case "AddContent" when arguments.Count == 2 && Literal(arguments[1]) is { } content:
                yield return content;
                break;
            case "AddMarkupContent" when Literal(arguments[1]) is { } markup:
                foreach (Match attribute in ReadAttribute().Matches(markup)) yield return attribute.Groups[1].Value;
                yield return Tag().Replace(Unread().Replace(markup, " "), " ");
                break;
            case "AddAttribute" or "AddComponentParameter" when arguments.Count == 3 && Literal(arguments[2]) is { } value
                && read.Contains(NameOf(arguments[1].Expression)):
                yield return value;
                break;
        }
    }

    private static string NameOf(ExpressionSyntax name) => name switch
    {
        LiteralExpressionSyntax literal => literal.Token.ValueText,
        InvocationExpressionSyntax { ArgumentList.Arguments: [var named] } =>
            named.Expression is MemberAccessExpressionSyntax member ? member.Name.Identifier.Text : named.Expression.ToString(),
        _ => "",
    };

    private static string? Literal(ArgumentSyntax argument) => argument.Expression switch
    {
        LiteralExpressionSyntax { RawKind: (int)SyntaxKind.StringLiteralExpression } literal => literal.Token.ValueText,
        _ => null,
    };

    [GeneratedRegex(@"[\p{L}][\p{L}\d]*")]
    private static partial Regex Word();

    [GeneratedRegex("<(script|style|svg)\\b.*?</\\1>", RegexOptions.Singleline)]
    private static partial Regex Unread();

    [GeneratedRegex("<[^>]*>|&[a-z]+;")]
    private static partial Regex Tag();

    [GeneratedRegex("(?:title|aria-label|placeholder|alt)=\"([^\"]*)\"")]
    private static partial Regex ReadAttribute();
}
