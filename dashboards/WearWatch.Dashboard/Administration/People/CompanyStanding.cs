namespace WearWatch.Dashboard.Administration.People;

/// <summary>What the company's OpenID provider answers about a person who is signed in.</summary>
/// <param name="Vouches">Whether it vouches for the person; null when it said nothing.</param>
/// <param name="Groups">The person's groups.</param>
/// <param name="Tokens">The new tokens, sealed; empty where it gave none.</param>
public sealed record CompanyStanding(bool? Vouches, IReadOnlyCollection<string> Groups, string Tokens)
{
    /// <summary>The provider does not answer, or was not asked.</summary>
    public static CompanyStanding Silent { get; } = new(null, [], "");

    /// <summary>The provider lets the person in no more.</summary>
    public static CompanyStanding No { get; } = new(false, [], "");
}
