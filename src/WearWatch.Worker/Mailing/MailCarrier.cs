using MailKit.Net.Smtp;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using WearWatch.Plant.Mailing;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Mailing;

/// <summary>Brings what waits in the mail box to the mail server, again and again. While that is away the mails wait.</summary>
public sealed class MailCarrier(
    MailBox box, MailServer server, IOptions<MailOptions> options, TimeProvider clock, ILogger<MailCarrier> logger)
    : BackgroundService
{
    /// <summary>The first code by which a server refuses for good (RFC 5321, 4.2.1).</summary>
    private const int ForGood = 500;

    /// <summary>Why nothing is sent at the moment; null while all is well.</summary>
    public string? Trouble { get; private set; }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await SendAsync(stoppingToken);
            }
            catch (Exception e) when (e is not OperationCanceledException || !stoppingToken.IsCancellationRequested)
            {
                Trouble = e.Message;
                logger.MailNotSent(e.Message);
            }

            await Task.Delay(options.Value.Every, clock, stoppingToken);
        }
    }

    /// <summary>Sends until nothing waits whose time has come.</summary>
    private async Task SendAsync(CancellationToken ct)
    {
        if (await box.TakeAsync(ct) is not { } mail) return;
        SmtpClient client;
        try
        {
            client = await server.ConnectAsync(ct);
        }
        catch (Exception e) when (e is not OperationCanceledException || !ct.IsCancellationRequested)
        {
            await box.WaitAsync(mail, e.Message);
            throw;
        }

        using (client)
        {
            for (var next = mail; next is not null; next = await box.TakeAsync(ct)) await SendAsync(client, next, ct);
            await client.DisconnectAsync(quit: true, ct);
        }

        Trouble = null;
    }

    private async Task SendAsync(SmtpClient client, MailRow mail, CancellationToken ct)
    {
        try
        {
            await client.SendAsync(server.Message(mail), ct);
        }
        catch (SmtpCommandException e) when (IsAboutThisMail(e))
        {
            if ((int)e.StatusCode < ForGood)
            {
                await box.WaitAsync(mail, e.Message);
                return;
            }

            logger.MailRefused(mail.Address, e.Message);
            await box.GiveUpAsync(mail, e.Message);
            return;
        }
        catch (Exception e) when (e is not OperationCanceledException || !ct.IsCancellationRequested)
        {
            await box.WaitAsync(mail, e.Message);
            throw;
        }

        await box.SentAsync(mail);
    }

    /// <remarks>A refused sender or a missing sign-in is the settings' fault: no mail is given up for it.</remarks>
    private static bool IsAboutThisMail(SmtpCommandException refusal) =>
        refusal.ErrorCode is SmtpErrorCode.RecipientNotAccepted or SmtpErrorCode.MessageNotAccepted;
}
