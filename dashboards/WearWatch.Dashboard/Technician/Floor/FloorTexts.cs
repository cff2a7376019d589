using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Extensions.FileProviders;

namespace WearWatch.Dashboard.Technician.Floor;

/// <summary>
/// The texts that the floor's scripts ask a language for: what stands behind the tags <c>t</c> and <c>phrase</c>, with a numbered
/// hole for each fact, as phrases of the other programs have it.
/// </summary>
public static partial class FloorTexts
{
    /// <summary>Of all scripts of the floor.</summary>
    public static IReadOnlySet<string> KeysIn(IFileProvider files)
    {
        HashSet<string> keys = [];
        foreach (var file in files.GetDirectoryContents("floor").Where(f => f.Name.EndsWith(".js", StringComparison.Ordinal)))
        {
            using var script = new StreamReader(file.CreateReadStream());
            keys.UnionWith(KeysOf(script.ReadToEnd()));
        }

        return keys;
    }

    /// <summary>Of one script; a text inside of another's hole too.</summary>
    public static IEnumerable<string> KeysOf(string script)
    {
        var code = Comment().Replace(script, "");
        return Tag().Matches(code).Select(m => FormAt(code, m.Index + m.Length));
    }

    private static string FormAt(string code, int at)
    {
        var form = new StringBuilder();
        for (var holes = 0; code[at] != '`';)
        {
            if (!OpensHole(code, at))
            {
                form.Append(code[at++]);
                continue;
            }

            form.Append('{').Append(holes++.ToString(CultureInfo.InvariantCulture)).Append('}');
            at = AfterHole(code, at + 2);
        }

        return form.ToString();
    }

    private static int AfterHole(string code, int at)
    {
        for (var depth = 1; depth > 0; at++)
        {
            if (code[at] == '`') at = EndOfText(code, at + 1);
            else if (code[at] is '{' or '}') depth += code[at] == '{' ? 1 : -1;
        }

        return at;
    }

    private static int EndOfText(string code, int at)
    {
        while (code[at] != '`') at = OpensHole(code, at) ? AfterHole(code, at + 2) : at + 1;
        return at;
    }

    private static bool OpensHole(string code, int at) => code[at] == '$' && code[at + 1] == '{';

    [GeneratedRegex(@"^\s*(//|/?\*).*$", RegexOptions.Multiline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"(?<![\w.])(?:t|phrase)`")]
    private static partial Regex Tag();
}
