using System.Security.Cryptography;
using System.Text;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>
/// The code by which whoever started the program sets the administrator up: it stands on the console only, and counts until
/// somebody is set up or the program ends.
/// </summary>
public sealed class SetUpCode
{
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789"; // without those that are taken for one another
    private const int Length = 12; // 60 bits

    /// <summary>The code, as it is shown.</summary>
    public string Text { get; } = string.Join(
        '-', RandomNumberGenerator.GetItems<char>(Letters, Length).Chunk(4).Select(part => new string(part)));

    /// <summary>Whether somebody typed it; case and dashes do not matter.</summary>
    public bool IsRight(string? typed) =>
        CryptographicOperations.FixedTimeEquals(Bytes(Text), Bytes((typed ?? "").ToUpperInvariant()));

    private static byte[] Bytes(string code) => Encoding.UTF8.GetBytes(new string([.. code.Where(char.IsAsciiLetterOrDigit)]));
}
