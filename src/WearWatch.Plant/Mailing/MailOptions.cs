using System.ComponentModel.DataAnnotations;

namespace WearWatch.Plant.Mailing;

/// <summary>The settings of the section <c>WearWatch:Mail</c>.</summary>
public sealed class MailOptions
{
    /// <summary>The mail server, such as <c>smtp.example.org</c>; empty for none.</summary>
    public string Host { get; set; } = "";

    /// <summary>587 for submission (RFC 6409), 465 for TLS from the first byte (RFC 8314), 25 within a plant.</summary>
    [Range(1, 65535)]
    public int Port { get; set; } = 587;

    /// <summary>How the way to it is kept secret.</summary>
    public MailSecurity Security { get; set; } = MailSecurity.StartTls;

    /// <summary>The sender, such as <c>WearWatch &lt;wearwatch@example.org&gt;</c>.</summary>
    public string From { get; set; } = "";

    /// <summary>The account at the server; empty for a server that asks for none.</summary>
    public string User { get; set; } = "";

    /// <summary>The account's password, or one that the server gave for this program alone.</summary>
    public string Password { get; set; } = "";

    /// <summary>
    /// Where a token is had in place of a password (OAuth 2.0, client credentials: RFC 6749, 4.4); empty for nowhere.
    /// </summary>
    public string TokenUrl { get; set; } = "";

    /// <summary>This program's name there.</summary>
    public string ClientId { get; set; } = "";

    /// <summary>This program's secret there.</summary>
    public string ClientSecret { get; set; } = "";

    /// <summary>What the token is to be good for.</summary>
    public string Scope { get; set; } = "";

    /// <summary>Where people open WearWatch, such as <c>https://wear.example.org</c>: mails lead there.</summary>
    public string Link { get; set; } = "";

    /// <summary>How often is looked for notices to mail and for mails to send; from a tenth of a second to an hour.</summary>
    [Range(typeof(TimeSpan), "00:00:00.1", "01:00:00", ConvertValueInInvariantCulture = true,
        ParseLimitsInInvariantCulture = true)]
    public TimeSpan Every { get; set; } = TimeSpan.FromSeconds(30);

    /// <summary>Whether a mail server is set.</summary>
    public bool IsOn => Host.Length > 0;
}
