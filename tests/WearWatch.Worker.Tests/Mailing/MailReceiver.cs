using System.Buffers;
using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using MimeKit;
using SmtpServer;
using SmtpServer.ComponentModel;
using SmtpServer.Mail;
using SmtpServer.Protocol;
using SmtpServer.Storage;

namespace WearWatch.Worker.Tests.Mailing;

/// <summary>
/// A real mail server on a free port of this machine. It keeps what it takes; it can be taken away and put back.
/// </summary>
public sealed class MailReceiver : IAsyncDisposable
{
    private readonly Taking taking = new();
    private CancellationTokenSource? stop;
    private Task running = Task.CompletedTask;

    public MailReceiver()
    {
        using var free = new TcpListener(IPAddress.Loopback, 0);
        free.Start();
        Port = ((IPEndPoint)free.LocalEndpoint).Port;
    }

    public int Port { get; }

    /// <summary>What it took, in the order in which it came.</summary>
    public IReadOnlyList<MimeMessage> Mails => [.. taking.Mails];

    /// <summary>An address that it knows nobody of.</summary>
    public string Unknown { get => taking.Unknown; set => taking.Unknown = value; }

    /// <summary>Whether it refuses every sender, as one whose settings are wrong finds it.</summary>
    public bool RefusesSenders { get => taking.RefusesSenders; set => taking.RefusesSenders = value; }

    /// <summary>Settings of the section WearWatch that send mail here.</summary>
    public (string Key, string Value)[] Settings =>
    [
        ("Mail:Host", "127.0.0.1"), ("Mail:Port", $"{Port}"), ("Mail:Security", "None"),
        ("Mail:From", "WearWatch <wearwatch@mill.example>"), ("Mail:Link", "https://wear.mill.example"),
    ];

    public void Start()
    {
        var services = new ServiceProvider();
        services.Add((IMessageStore)taking);
        services.Add((IMailboxFilterFactory)taking);
        var options = new SmtpServerOptionsBuilder().ServerName("mill.example")
            .Endpoint(end => end.Endpoint(new IPEndPoint(IPAddress.Loopback, Port))).Build();
        stop = new CancellationTokenSource();
        running = new SmtpServer.SmtpServer(options, services).StartAsync(stop.Token);
    }

    public async Task StopAsync()
    {
        if (stop is null) return;
        await stop.CancelAsync();
        try
        {
            await running;
        }
        catch (OperationCanceledException)
        {
            // As asked.
        }

        stop.Dispose();
        stop = null;
    }

    public async ValueTask DisposeAsync() => await StopAsync();

    private sealed class Taking : MessageStore, IMailboxFilter, IMailboxFilterFactory
    {
        public ConcurrentQueue<MimeMessage> Mails { get; } = [];

        public string Unknown { get; set; } = "";

        public bool RefusesSenders { get; set; }

        public override async Task<SmtpResponse> SaveAsync(
            ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer,
            CancellationToken cancellationToken)
        {
            using var bytes = new MemoryStream(buffer.ToArray());
            Mails.Enqueue(await MimeMessage.LoadAsync(bytes, cancellationToken));
            return SmtpResponse.Ok;
        }

        public IMailboxFilter CreateInstance(ISessionContext context) => this;

        public Task<bool> CanAcceptFromAsync(
            ISessionContext context, IMailbox from, int size, CancellationToken cancellationToken) =>
            Task.FromResult(!RefusesSenders);

        public Task<bool> CanDeliverToAsync(
            ISessionContext context, IMailbox to, IMailbox from, CancellationToken cancellationToken) =>
            Task.FromResult($"{to.User}@{to.Host}" != Unknown);
    }
}
