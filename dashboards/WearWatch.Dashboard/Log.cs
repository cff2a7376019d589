namespace WearWatch.Dashboard;

/// <summary>What the dashboard says to the person on call.</summary>
internal static partial class Log
{
    [LoggerMessage(301, LogLevel.Warning, "A file chosen in a browser could not be read")]
    public static partial void FileNotRead(this ILogger logger, Exception error);

    [LoggerMessage(302, LogLevel.Information, "Loading the demo mill, as asked by the argument demo")]
    public static partial void LoadingDemo(this ILogger logger);

    [LoggerMessage(303, LogLevel.Information, "The demo mill is loaded: {Taken} rows taken, {Known} already known")]
    public static partial void DemoLoaded(this ILogger logger, int taken, int known);

    [LoggerMessage(305, LogLevel.Warning, "Nobody is set up who could sign in, so only this machine is let in. "
        + "Set the administrator up at {Url}/people/first with the code {Code}")]
    public static partial void NotSetUp(this ILogger logger, string url, string code);
}
