namespace WearWatch.Plant.People;

/// <summary>What is said at a shared tablet.</summary>
public static class PinWords
{
    /// <summary>The PIN is another.</summary>
    public static Phrase Wrong { get; } = $"The PIN is not right; nobody was signed in with it.";

    /// <summary>The PIN is not looked at for a while after wrong ones.</summary>
    public static Phrase Locked { get; } =
        $"Too many wrong PINs: PINs of this person wait for five minutes. The password works at once.";

    /// <summary>The PIN was wrong too often and counts no more.</summary>
    public static Phrase TakenAway { get; } =
        $"The PIN was wrong too often and is taken away. Sign in with the password and set a new one on the page Who am I.";

    /// <summary>The person has set no PIN.</summary>
    public static Phrase NoPin { get; } =
        $"This person has no PIN here. Sign in with the password; a PIN is set on the page Who am I.";

    /// <summary>The browser was not made a shared tablet.</summary>
    public static Phrase NoTablet { get; } =
        $"This browser is not a shared tablet, so no PIN counts here. Sign in with name and password.";
}
