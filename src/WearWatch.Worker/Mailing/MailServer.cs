using MailKit.Net.Smtp;
using MailKit.Security;
using Microsoft.Extensions.Options;
using MimeKit;
using WearWatch.Plant.Mailing;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Mailing;

/// <summary>The plant's mail server, spoken to by SMTP (RFC 5321).</summary>
public sealed class MailServer(IOptions<MailOptions> options, AccessToken token)
{
    private const int PatienceMs = 30_000;

    /// <summary>Gets in.</summary>
    /// <exception cref="Exception">The server is away or does not let us in; the message says why.</exception>
    public async Task<SmtpClient> ConnectAsync(CancellationToken ct)
    {
        var set = options.Value;
        var client = new SmtpClient { Timeout = PatienceMs };
        try
        {
            await client.ConnectAsync(set.Host, set.Port, WayOf(set.Security), ct);
            if (set.TokenUrl.Length > 0)
                await client.AuthenticateAsync(new SaslMechanismOAuth2(set.User, await token.AskAsync(ct)), ct);
            else if (set.User.Length > 0) await client.AuthenticateAsync(set.User, set.Password, ct);
            return client;
        }
        catch
        {
            client.Dispose();
            throw;
        }
    }

    /// <summary>The mail as it is sent: plain and HTML, under an id that stays however often it is sent.</summary>
    public MimeMessage Message(MailRow mail)
    {
        var from = MailboxAddress.Parse(options.Value.From);
        var message = new MimeMessage
        {
            MessageId = $"{mail.Key.Replace(' ', '.')}.{mail.WrittenAt.UtcTicks}@{from.Domain}",
            Date = mail.WrittenAt,
            Subject = mail.Subject,
            Body = new BodyBuilder { TextBody = mail.PlainText, HtmlBody = mail.Html }.ToMessageBody(),
        };
        message.From.Add(from);
        message.To.Add(MailboxAddress.Parse(mail.Address));
        // No out-of-office answer is to come to a program (RFC 3834).
        message.Headers.Add("Auto-Submitted", "auto-generated");
        return message;
    }

    private static SecureSocketOptions WayOf(MailSecurity security) => security switch
    {
        MailSecurity.Tls => SecureSocketOptions.SslOnConnect,
        MailSecurity.None => SecureSocketOptions.None,
        _ => SecureSocketOptions.StartTls,
    };
}
