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

    [LoggerMessage(
        304, LogLevel.Critical, "{Why} Stop the other program, or set another address as Kestrel:Endpoints:Loopback:Url.")]
    public static partial void AddressTaken(this ILogger logger, string why);

    [LoggerMessage(305, LogLevel.Critical, "{Url} can be reached from other machines, but nobody is set up who could sign in. "
        + "Open /people/first on this machine with the usual address, or run the dashboard with the arguments: administrator "
        + "NAME. Then start again.")]
    public static partial void NotSetUp(this ILogger logger, string url);
}
