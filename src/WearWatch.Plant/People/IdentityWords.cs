using Microsoft.AspNetCore.Identity;

namespace WearWatch.Plant.People;

/// <summary>What ASP.NET Core Identity says against a name or a password, in our words.</summary>
public static class IdentityWords
{
    /// <summary>The fewest characters of a password.</summary>
    public const int ShortestPassword = 10;

    /// <summary>The fewest different characters of a password.</summary>
    public const int FewestDifferent = 5;

    /// <summary>An error; the framework's own English where it is one that our rules do not raise.</summary>
    internal static Phrase Of(IdentityError error) => error.Code switch
    {
        nameof(IdentityErrorDescriber.PasswordTooShort) =>
            Phrase.Of($"A password has {ShortestPassword} characters or more."),
        nameof(IdentityErrorDescriber.PasswordRequiresUniqueChars) =>
            $"A password has at least {FewestDifferent} different characters.",
        nameof(IdentityErrorDescriber.DuplicateUserName) => $"Somebody has this name already.",
        nameof(IdentityErrorDescriber.ConcurrencyFailure) => $"Somebody else changed this person just now. Try again.",
        _ => Phrase.Verbatim(error.Description),
    };
}
