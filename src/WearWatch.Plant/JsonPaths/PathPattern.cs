using System.Text;
using System.Text.RegularExpressions;

namespace WearWatch.Plant.JsonPaths;

/// <summary>The patterns of <c>match</c> and <c>search</c>: I-Regexp, RFC 9485.</summary>
internal static class PathPattern
{
    /// <summary>Any character but the two ends of a line; one beyond the first 65,536 is two of .NET's.</summary>
    private const string Dot = @"(?:[\ud800-\udbff][\udc00-\udfff]|[^\n\r])";

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

    /// <summary>What RFC 9485 means by a dot, .NET says otherwise.</summary>
    private static string Translate(string pattern)
    {
        var same = new StringBuilder();
        var isInClass = false;
        for (var i = 0; i < pattern.Length; i++)
        {
            var sign = pattern[i];
            isInClass = sign switch { '[' => true, ']' => false, _ => isInClass };
            if (sign == '.' && !isInClass) same.Append(Dot);
            else same.Append(sign);
            if (sign == '\\' && i + 1 < pattern.Length) same.Append(pattern[++i]);
        }

        return same.ToString();
    }
}
