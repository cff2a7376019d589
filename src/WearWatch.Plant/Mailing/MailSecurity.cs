namespace WearWatch.Plant.Mailing;

/// <summary>How the way to the mail server is kept secret.</summary>
public enum MailSecurity
{
    /// <summary>It begins in the open and goes over to TLS (RFC 3207); a server that cannot is left.</summary>
    StartTls = 0,

    /// <summary>TLS from the first byte (RFC 8314).</summary>
    Tls = 1,

    /// <summary>Not at all: for a server within the plant that knows nothing else. No password is sent there.</summary>
    None = 2,
}
