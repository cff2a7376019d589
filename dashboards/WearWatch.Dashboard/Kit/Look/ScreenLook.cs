namespace WearWatch.Dashboard.Kit.Look;

/// <summary>The two looks, and the cookie that remembers which one a person took.</summary>
public static class ScreenLook
{
    /// <summary>Name of the cookie.</summary>
    public const string Cookie = "wearwatch-look";

    /// <summary>The light look.</summary>
    public const string Light = "software";

    /// <summary>The dark look.</summary>
    public const string Dark = "software-dark";

    /// <summary>The program's own style sheet, which the build joins from those of its parts.</summary>
    public const string Sheet = "lib/wearwatch.css";

    /// <summary>Whether a look is the dark one.</summary>
    public static bool IsDark(string? theme) => theme == Dark;

    /// <summary>The look that a cookie names; light for anything else that may stand in it.</summary>
    public static string FromCookie(string? value) => value == Dark ? Dark : Light;
}
