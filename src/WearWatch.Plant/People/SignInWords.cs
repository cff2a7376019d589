namespace WearWatch.Plant.People;

/// <summary>What is said at the door.</summary>
public static class SignInWords
{
    /// <summary>Name or password do not fit; which of both is not said.</summary>
    public static Phrase Wrong { get; } = $"The name or the password is not right.";

    /// <summary>Too many tries missed: the next one is not looked at yet.</summary>
    public static Phrase Wait(TimeSpan time)
    {
        var seconds = (int)Math.Ceiling(time.TotalSeconds);
        if (seconds < 60) return $"Too many wrong tries. Wait {seconds} s, or use a passkey.";
        return $"Too many wrong tries. Wait {(seconds + 59) / 60} min, or use a passkey.";
    }

    /// <summary>An administrator has switched the person off.</summary>
    public static Phrase Off { get; } =
        $"This person is switched off. An administrator can switch the sign-in on again.";

    /// <summary>The passkey let nobody in.</summary>
    public static Phrase PasskeyUnknown { get; } =
        $"This passkey is not known here, or it took too long. Try again, or use the password.";

    /// <summary>The device made no passkey that can be kept.</summary>
    public static Phrase PasskeyNotMade { get; } =
        $"No passkey was made: the device's answer does not fit, or it took too long. Try again.";

    /// <summary>More tries came from one address than are answered.</summary>
    public static Phrase TooMany { get; } = $"Too many tries came from here. Wait a minute, then try again.";
}
