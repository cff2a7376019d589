using System.Text;
using System.Text.RegularExpressions;

namespace WearWatch.Plant.JsonPaths;

/// <summary>The patterns of <c>match</c> and <c>search</c>: I-Regexp, RFC 9485.</summary>
internal static class PathPattern
{
    /// <summary>The pattern; null when it is none, which matches nothing.</summary>
    /// <remarks>It is matched in linear time, so that no pattern holds a worker up.</remarks>
    public static Regex? Of(string pattern, bool whole)
    {
        var same = Translate(pattern);
        try
        {
            return new Regex(whole ? $@"\A(?:{same})\z" : same, RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);
        }
        catch (Exception e) when (e is ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    /// <summary>A dot stands for no end of a line, of which .NET knows one and RFC 9485 two.</summary>
    private static string Translate(string pattern)
    {
        var same = new StringBuilder();
        var isInClass = false;
        for (var i = 0; i < pattern.Length; i++)
        {
            var sign = pattern[i];
            isInClass = sign switch { '[' => true, ']' => false, _ => isInClass };
            if (sign == '.' && !isInClass) same.Append(@"[^\n\r]");
            else same.Append(sign);
            if (sign == '\\' && i + 1 < pattern.Length) same.Append(pattern[++i]);
        }

        return same.ToString();
    }
}
