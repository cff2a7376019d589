using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace WearWatch.Storage.Engines;

/// <summary>Passes on in this process what other processes on the same PostgreSQL database have told.</summary>
public sealed class NewsListener(WearStore store, PlantNews news)
{
    internal const string Channel = "wearwatch_chains";

    /// <summary>A connection that is silent for so long is asked whether it still lives.</summary>
    private const int KeepAliveSeconds = 15;

    /// <summary>Listens until the connection breaks or it is stopped.</summary>
    /// <remarks>What was told while nobody listened is made up for: at the beginning every chain counts as changed.</remarks>
    /// <exception cref="NpgsqlException">The connection broke; call again.</exception>
    public async Task ListenAsync(CancellationToken ct)
    {
        var how = new NpgsqlConnectionStringBuilder(store.Postgres) { Pooling = false, KeepAlive = KeepAliveSeconds };
        await using var connection = new NpgsqlConnection(how.ConnectionString);
        connection.Notification += (_, told) => PassOn(told.Payload);
        await connection.OpenAsync(ct);
        await using (var command = new NpgsqlCommand($"LISTEN {Channel}", connection)) await command.ExecuteNonQueryAsync(ct);
        await using (var db = store.CreateDbContext()) news.Tell(await db.Chains.Select(c => c.Id).ToListAsync(ct));
        while (true) await connection.WaitAsync(ct);
    }

    private void PassOn(string text)
    {
        var words = text.Split(' ');
        if (words[0] == store.Name.ToString("N")) return; // told here already
        news.Tell([.. words[1].Split(',').Select(id => int.Parse(id, CultureInfo.InvariantCulture))]);
    }
}
