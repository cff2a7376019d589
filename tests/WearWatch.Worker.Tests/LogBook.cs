using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace WearWatch.Worker.Tests;

/// <summary>Keeps what is logged.</summary>
public sealed class LogBook : ILoggerProvider
{
    public ConcurrentQueue<(LogLevel Level, string Text)> Lines { get; } = new();

    public ILogger CreateLogger(string categoryName) => new Page(this);

    public void Dispose()
    {
    }

    private sealed class Page(LogBook book) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Information;

        public void Log<TState>(
            LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            book.Lines.Enqueue((logLevel, formatter(state, exception)));
    }
}
