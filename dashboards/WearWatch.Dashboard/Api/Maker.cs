using System.Security.Claims;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.People;

namespace WearWatch.Dashboard.Api;

/// <summary>
/// Under whose name an entry is kept: the one who is signed in, or while nobody is set up the one that was told.
/// </summary>
internal static class Maker
{
    private const string Unnamed = "api";

    /// <summary>The name to keep.</summary>
    public static string Name(ClaimsPrincipal who, string? told) =>
        who.KeptName() ?? (string.IsNullOrWhiteSpace(told) ? Unnamed : told);

    /// <summary>Refuses an entry that says it is another person's than the one who sends it; null when it is the same.</summary>
    /// <remarks>A phone that is handed on sends what the one before typed: he signs in again and sends it himself.</remarks>
    public static IResult? Fault(ClaimsPrincipal who, string? told, int? makerId = null)
    {
        var (name, id) = (who.KeptName(), who.PersonId());
        var isOthers = makerId is not null && makerId != id;
        if (name is not null && !string.IsNullOrWhiteSpace(told)
            && !string.Equals(told, name, StringComparison.OrdinalIgnoreCase)) isOthers = true;
        if (!isOthers) return null;
        Phrase named = string.IsNullOrWhiteSpace(told) ? Phrase.Of($"person {makerId}") : $"'{told}'";
        return Problems.Of(
            "other_maker", $"Another person's entry", name is null
                ? Phrase.Of($"The entry says that {named} made it, but nobody who is signed in sends it. "
                    + $"Its maker has to sign in and send it. Nothing was stored.")
                : $"The entry says that {named} made it, but it is sent by {name}. "
                    + $"Its maker has to sign in and send it. Nothing was stored.");
    }
}
