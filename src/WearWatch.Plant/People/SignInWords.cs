namespace WearWatch.Plant.People;

/// <summary>What is said at the door.</summary>
public static class SignInWords
{
    /// <summary>Name or password do not fit; which of both is not said.</summary>
    public const string Wrong = "The name or the password is not right.";

    /// <summary>The sign-in is locked after wrong tries.</summary>
    public const string Locked = "Too many wrong tries: this sign-in is locked for five minutes. An administrator can free it "
        + "at once by giving a new password.";

    /// <summary>An administrator has switched the person off.</summary>
    public const string Off = "This person is switched off. An administrator can switch the sign-in on again.";

    /// <summary>The passkey let nobody in.</summary>
    public const string PasskeyUnknown = "This passkey is not known here, or it took too long. Try again, or use the password.";

    /// <summary>The device made no passkey that can be kept.</summary>
    public const string PasskeyNotMade = "No passkey was made: the device's answer does not fit, or it took too long. Try again.";

    /// <summary>More tries came from one address than are answered.</summary>
    public const string TooMany = "Too many tries came from here. Wait a minute, then try again.";
}
