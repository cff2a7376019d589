using Microsoft.Data.Sqlite;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// Two phones enter two hundred entries of each kind over networks that refuse, hang, cut and trickle, while server and browsers
/// are killed, a phone's memory is full and the floor gets another version. What a phone said it keeps is at the server once, in
/// order, under its person; what the server refused is still in hand.
/// </summary>
/// <remarks>
/// Every run has two seeds with two kills of the server and one of a browser; <c>tests/run --long</c> twenty with ten and five.
/// </remarks>
public sealed class RoughShiftTests(Screen screen)
{
    private const int Entries = 200;
    private static readonly TimeSpan patience = TimeSpan.FromMinutes(4);

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    public static TheoryData<int> LongSeeds => [.. Enumerable.Range(1, 20)];

    [Theory]
    [InlineData(101)]
    [InlineData(102)]
    public Task Nothing_that_a_phone_keeps_is_lost_or_doubled_on_a_rough_shift(int seed) =>
        ShiftAsync(seed, serverKills: 2, browserKills: 1);

    [Theory(Explicit = true)]
    [MemberData(nameof(LongSeeds))]
    public Task Nothing_that_a_phone_keeps_is_lost_or_doubled_on_many_rough_shifts(int seed) =>
        ShiftAsync(seed, serverKills: 10, browserKills: 5);

    private async Task ShiftAsync(int seed, int serverKills, int browserKills)
    {
        var chance = new Random(seed);
        await using var server = new ServerProcess();
        await server.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        await using var network = new WeakNetwork(server.Address);
        await using var ann = new RoughPhone(screen, server.Address, "Ann", network);
        await using var ben = new RoughPhone(screen, server.Address, "Ben", network);
        RoughPhone[] phones = [ann, ben];
        var chains = await server.TakeInAsync(client, "ROUGH");
        foreach (var phone in phones)
        {
            await phone.StartAsync();
            await phone.Page.ReadyAsync();
        }

        var version = await ann.Page.GetAttributeAsync("html", "data-build");
        using var shift = new CancellationTokenSource();
        var weather = ChangeAsync(network, new Random(seed), shift.Token);
        List<Func<Task>> disasters =
        [
            .. Enumerable.Repeat(KillServerAsync, serverKills),
            .. Enumerable.Range(0, browserKills).Select(i => (Func<Task>)(() => KillBrowserAsync(phones[i % 2]))),
            () => FillMemoryAsync(ben),
        ];
        var order = disasters.OrderBy(_ => chance.Next()).ToList();
        var steps = order.Count + 1;
        for (var step = 0; step < steps; step++)
        {
            var (from, to) = (Entries / 2 * step / steps, Entries / 2 * (step + 1) / steps);
            await Task.WhenAll(phones.Select((phone, i) => phone.EnterAsync(chains[i].Id, chains[i].Name, from, to - from)));
            foreach (var phone in phones) _ = phone.SendAsync();
            if (step == steps / 2) server.UpdateFloor();
            if (step < order.Count) await order[step]();
        }

        await shift.CancelAsync();
        await weather;
        network.Signal = Signal.Good;
        foreach (var phone in phones) await SendAllAsync(phone);
        foreach (var phone in phones) await CheckAsync(server, phone);
        Assert.InRange(ann.Kept.Count + ben.Kept.Count, Entries, 2 * Entries);
        await ann.LookAtItAsync();
        await ann.Page.WaitForFunctionAsync(
            "build => document.documentElement.dataset.build !== build", version);

        async Task KillServerAsync()
        {
            await server.KillAsync();
            await server.StartAsync();
        }

        async Task KillBrowserAsync(RoughPhone phone)
        {
            await phone.KillAsync();
            await phone.StartAsync();
        }

        async Task FillMemoryAsync(RoughPhone phone)
        {
            var before = phone.Kept.Count;
            await phone.FillMemoryAsync(full: true);
            await phone.EnterAsync(chains[1].Id, chains[1].Name, Entries, 4);
            Assert.Equal(before, phone.Kept.Count);
            await phone.FillMemoryAsync(full: false);
        }
    }

    /// <summary>The signal changes all the time, and is good for half of it.</summary>
    private static async Task ChangeAsync(WeakNetwork network, Random chance, CancellationToken ct)
    {
        while (!ct.IsCancellationRequested)
        {
            network.Signal = (Signal)Math.Max(0, chance.Next(-4, 6));
            await Task.Delay(chance.Next(100, 1200), CancellationToken.None);
        }
    }

    private static async Task SendAllAsync(RoughPhone phone)
    {
        using var late = new CancellationTokenSource(patience);
        while (await phone.SendAsync() > 0) await Task.Delay(100, late.Token);
    }

    private static async Task CheckAsync(ServerProcess server, RoughPhone phone)
    {
        var refused = phone.Kept.Where(e => e.Kind == "refused").Select(e => e.Id).ToList();
        Assert.NotEmpty(refused);
        Assert.Empty(refused.Except(await phone.ToCheckAsync()));
        (string Table, string[] Kinds)[] places =
        [
            ("Readings", ["measure"]), ("Events", ["done", "inspect"]), ("Looks", ["inspect"]), ("Photos", ["photo"]),
        ];
        foreach (var (table, kinds) in places)
        {
            var told = phone.Kept.Where(e => kinds.Contains(e.Kind)).Select(e => e.Id).ToList();
            var stored = await KeysAsync(server, table, phone.Person);
            Assert.Equal(told, stored);
        }
    }

    /// <summary>The keys in a table that a person told, in the order in which they were stored.</summary>
    private static async Task<List<string>> KeysAsync(ServerProcess server, string table, string person)
    {
        await using var db = new SqliteConnection($"Data Source={server.Database};Mode=ReadOnly");
        await db.OpenAsync(Ct);
        await using var command = db.CreateCommand();
        command.CommandText = table == "Photos"
            ? "SELECT p.Key FROM Photos p JOIN Looks l ON l.Key = p.LookKey WHERE l.ToldBy = $person ORDER BY p.Id"
            : $"SELECT Key FROM {table} WHERE ToldBy = $person ORDER BY Id";
        command.Parameters.AddWithValue("$person", person);
        List<string> keys = [];
        await using var rows = await command.ExecuteReaderAsync(Ct);
        while (await rows.ReadAsync(Ct)) keys.Add(rows.GetString(0));
        return keys;
    }
}
