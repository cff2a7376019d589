namespace WearWatch.Plant.People;

/// <summary>What is said at the door.</summary>
public static class SignInWords
{
    public const string Wrong = "The name or the password is not right.";
    public const string Locked = "Too many wrong tries: this sign-in is locked for five minutes. An administrator can free it "
        + "at once by giving a new password.";
    public const string Off = "This person is switched off. An administrator can switch the sign-in on again.";
    public const string PasskeyUnknown = "This passkey is not known here, or it took too long. Try again, or use the password.";
    public const string PasskeyNotMade = "No passkey was made: the device's answer does not fit, or it took too long. Try again.";
    public const string TooMany = "Too many tries came from here. Wait a minute, then try again.";
}
