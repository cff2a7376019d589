using System.Globalization;
using System.Net;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// The program at the other end of a connection on this machine, as the Linux kernel knows it (proc(5), <c>/proc/net/tcp</c> and
/// <c>/proc/PID/fd</c>). A browser serves nobody; what takes connections from elsewhere may pass them on.
/// </summary>
internal static class Neighbour
{
    private const string Listens = "0A"; // TCP_LISTEN of the kernel's include/net/tcp_states.h
    private static readonly string[] tables = ["/proc/net/tcp", "/proc/net/tcp6"];

    /// <summary>Whether that program serves others over the network, or is another user's, which may be anybody's.</summary>
    /// <param name="port">Its end of the connection.</param>
    /// <param name="ourPort">Our end.</param>
    public static bool ServesOthers(int port, int ourPort)
    {
        var sockets = tables.Where(File.Exists).SelectMany(Read).ToList();
        var theirs = sockets.FirstOrDefault(s => s.IsLoopback && s.Port == port && s.PeerPort == ourPort);
        var ours = sockets.FirstOrDefault(s => s.IsLoopback && s.Port == ourPort && s.PeerPort == port);
        if (theirs is null || theirs.User != ours?.User) return true;
        var open = sockets.Where(s => s.State == Listens && !s.IsLoopback).Select(s => s.Port).ToHashSet();
        var toNetwork = sockets.Where(s => !s.IsLoopback && open.Contains(s.Port)).Select(s => s.Inode).ToHashSet();
        // A browser may hide its inside from its own user's other programs: who cannot be seen to serve others does not.
        return Processes().Any(p => p.Contains(theirs.Inode) && p.Overlaps(toNetwork));
    }

    private static IEnumerable<Socket> Read(string table) => File.ReadLines(table).Skip(1)
        .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Where(f => f.Length > 9)
        .Select(f => new Socket(PortOf(f[1]), PortOf(f[2]), IsLoopbackOf(f[1]), f[3], f[7], f[9]));

    /// <summary>The sockets of each process that this user may look into.</summary>
    private static IEnumerable<HashSet<string>> Processes()
    {
        foreach (var folder in Directory.EnumerateDirectories("/proc").Where(d => char.IsAsciiDigit(Path.GetFileName(d)[0])))
        {
            HashSet<string> inodes;
            try
            {
                inodes = [.. Directory.EnumerateFiles(folder + "/fd").Select(f => new FileInfo(f).LinkTarget)
                    .Where(t => t?.StartsWith("socket:[", StringComparison.Ordinal) == true).Select(t => t![8..^1])];
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                continue; // ended meanwhile, or another user's
            }

            yield return inodes;
        }
    }

    private static int PortOf(string end) =>
        int.Parse(end.AsSpan(end.IndexOf(':') + 1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    // An address is written as words in the order of the machine's bytes.
    private static bool IsLoopbackOf(string end)
    {
        var bytes = Convert.FromHexString(end.AsSpan(0, end.IndexOf(':')));
        for (var word = 0; word < bytes.Length; word += 4) Array.Reverse(bytes, word, 4);
        var address = new IPAddress(bytes);
        return IPAddress.IsLoopback(address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address);
    }

    private sealed record Socket(int Port, int PeerPort, bool IsLoopback, string State, string User, string Inode);
}
