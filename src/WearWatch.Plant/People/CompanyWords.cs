namespace WearWatch.Plant.People;

/// <summary>What is said of company accounts.</summary>
public static class CompanyWords
{
    /// <summary>The provider sent somebody back without a word, or with one that cannot be believed.</summary>
    public static Phrase Failed { get; } =
        $"The sign-in with the company account did not come to its end. Try again, or use name and password.";

    /// <summary>The provider does not answer.</summary>
    public static Phrase Away { get; } =
        $"The company's sign-in does not answer. Try again later, or use name and password.";

    /// <summary>The person is in no group that may come in.</summary>
    public static Phrase NoGroup { get; } =
        $"Your company account is in no group that may use WearWatch. Ask whoever keeps the company's directory.";

    /// <summary>The provider stands for the person no more.</summary>
    public static Phrase Disowned { get; } =
        $"The company's directory does not vouch for you any more. Sign in with the company account.";

    /// <summary>A PIN or a passkey is made without a password right after the sign-in only.</summary>
    public static Phrase NotFresh { get; } =
        $"Sign out, sign in with the company account, then try again within 10 minutes.";

    /// <summary>The name is another person's.</summary>
    public static Phrase NameTaken(string name) =>
        $"{name} has a password here. Sign in with it, then connect the company account on your own page.";

    /// <summary>The account is another person's.</summary>
    public static Phrase Another(string name) => $"This company account is connected with {name} already.";
}
