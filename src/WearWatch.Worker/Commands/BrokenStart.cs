using System.Net.Sockets;
using Microsoft.Extensions.Options;
using WearWatch.Storage.Engines;
using WearWatch.Worker.Starting;

namespace WearWatch.Worker.Commands;

/// <summary>Why the program could not begin: what is wrong, what to do, and the exit code of its kind.</summary>
/// <param name="Code">One of <see cref="ExitCode"/>.</param>
/// <param name="What">What is wrong.</param>
/// <param name="ToDo">What to do.</param>
public sealed record BrokenStart(int Code, string What, string ToDo)
{
    /// <summary>The start that an error broke; null for a mistake of the program, which deserves its trace.</summary>
    public static BrokenStart? Of(Exception error) => error switch
    {
        FolderTakenException => new(ExitCode.FolderTaken, error.Message,
            "Stop the other program, or give this one a data folder of its own (WearWatch:DataFolder)."),
        OptionsValidationException or FormatException => new(ExitCode.SettingsWrong, $"A setting is wrong. {error.Message}",
            "Correct it in appsettings.json or in the environment; docs/operating.md lists the settings."),
        _ => OfPort(error) ?? OfStore(error),
    };

    /// <summary>Two lines for the console.</summary>
    public override string ToString() => What.ReplaceLineEndings(" ") + Environment.NewLine + ToDo;

    private static BrokenStart? OfPort(Exception error)
    {
        var code = (error as SocketException ?? error.InnerException as SocketException
            ?? error.InnerException?.InnerException as SocketException)?.SocketErrorCode;
        return code switch
        {
            SocketError.AddressAlreadyInUse => new(ExitCode.AddressTaken, $"The address to listen on is taken. {error.Message}",
                "Stop the other program, or set another address as Kestrel:Endpoints:Loopback:Url."),
            SocketError.AccessDenied => new(ExitCode.NoRights, $"This user may not listen on that address. {error.Message}",
                "Take a port from 1024 on as Kestrel:Endpoints:Loopback:Url, with a proxy in front."),
            _ => null,
        };
    }

    private static BrokenStart? OfStore(Exception error)
    {
        var said = error.GetBaseException().Message;
        return StoreFaults.Of(error) switch
        {
            StoreFault.NoRights => new(ExitCode.NoRights, $"The plant's memory may not be read and written. {said}",
                "Give the user that runs WearWatch the data folder and what lies in it: chown -R, rights 700."),
            StoreFault.Damaged => new(ExitCode.DatabaseDamaged, $"The plant's memory is damaged, or is no database. {said}",
                "Keep the file, and bring the newest backup back: wearwatch restore FILE --data EMPTY_FOLDER."),
            StoreFault.Newer => new(ExitCode.DatabaseNewer, said,
                "Run the newer program, or bring back the backup that was made before the upgrade."),
            StoreFault.Full => new(ExitCode.DiskFull, $"The disk is full. {said}",
                "Make room and start again. What was acknowledged is safe."),
            StoreFault.Away => new(ExitCode.DatabaseAway, $"The database cannot be reached. {said}",
                "Start it, or correct WearWatch:Database. What was acknowledged is safe."),
            _ => null,
        };
    }
}
