namespace WearWatch.Plant.People;

/// <summary>What is said at a shared tablet.</summary>
public static class PinWords
{
    /// <summary>The PIN is another.</summary>
    public const string Wrong = "The PIN is not right; nobody was signed in with it.";

    /// <summary>The sign-in is locked after wrong PINs.</summary>
    public const string Locked = "Too many wrong PINs: this person's sign-in is locked for five minutes. An administrator can "
        + "free it at once by giving a new password.";

    /// <summary>The PIN was wrong too often and counts no more.</summary>
    public const string TakenAway =
        "The PIN was wrong too often and is taken away. Sign in with the password and set a new one on the page Who am I.";

    /// <summary>The person has set no PIN.</summary>
    public const string NoPin = "This person has no PIN here. Sign in with the password; a PIN is set on the page Who am I.";

    /// <summary>The browser was not made a shared tablet.</summary>
    public const string NoTablet = "This browser is not a shared tablet, so no PIN counts here. Sign in with name and password.";
}
