using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>A phone with a memory that outlives its browser, and the person who enters on it.</summary>
/// <param name="screen">Starts browsers.</param>
/// <param name="address">Where the phone finds the server.</param>
/// <param name="person">Who enters.</param>
/// <param name="network">What lies between; none: a good network.</param>
internal sealed class RoughPhone(Screen screen, string address, string person, WeakNetwork? network = null) : IAsyncDisposable
{
    private readonly string memory = Directory.CreateTempSubdirectory("wearwatch-phone-").FullName;
    private IBrowserContext? browser;

    /// <summary>Who enters.</summary>
    public string Person => person;

    /// <summary>The open floor.</summary>
    public IPage Page => browser!.Pages[0];

    /// <summary>What the phone said that it keeps, in the order in which it said so.</summary>
    public List<KeptEntry> Kept { get; } = [];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    /// <summary>Starts the browser and opens the floor; without signal too, once it was open with it.</summary>
    public async Task StartAsync(bool offline = false)
    {
        browser = await screen.PhoneWithMemoryAsync(memory, network?.Between);
        if (offline) await browser.SetOfflineAsync(true);
        await Page.GotoAsync(address + "/floor/#/kept");
        await Page.Locator("html[data-shown]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
    }

    /// <summary>Enters some of each kind; what the phone did not say that it keeps is not counted.</summary>
    public async Task EnterAsync(int chainId, string chain, int from, int count)
    {
        var told = await Page.EvaluateAsync<string>(Entering, new { chainId, chain, by = person, from, count });
        Kept.AddRange(JsonSerializer.Deserialize<List<KeptEntry>>(told, JsonSerializerOptions.Web)!);
    }

    /// <summary>Fills the phone's memory, so that the browser refuses to keep entries as on a full disk; or frees it.</summary>
    public Task FillMemoryAsync(bool full) => Page.EvaluateAsync("""
        full => {
          const put = window.freePut ??= IDBObjectStore.prototype.put;
          IDBObjectStore.prototype.put = full
            ? function (...told) {
              if (this.name === 'entries') throw new DOMException('The disk is full.', 'QuotaExceededError');
              return put.apply(this, told);
            }
            : put;
        }
        """, full);

    /// <summary>Has it send now, and counts what still waits.</summary>
    public Task<int> SendAsync() => Page.EvaluateAsync<int>("""
        async () => {
          await (await import('/floor/outbox.js')).send({ atOnce: true });
          return (await (await import('/floor/store.js')).entries()).filter(entry => entry.state === 'kept').length;
        }
        """);

    /// <summary>Takes the phone out of the pocket: its page is seen again, and looks for another version of the floor.</summary>
    public Task LookAtItAsync() => Page.EvaluateAsync("() => document.dispatchEvent(new Event('visibilitychange'))");

    /// <summary>The keys of what is to be checked by the person, with all that it says.</summary>
    public Task<string[]> ToCheckAsync() => Page.EvaluateAsync<string[]>("""
        () => import('/floor/store.js').then(s => s.entries())
          .then(all => all.filter(entry => entry.state === 'check' && entry.body && entry.why).map(entry => entry.id))
        """);

    /// <summary>Ends the browser without a word, as an empty battery does.</summary>
    public async Task KillAsync()
    {
        foreach (var folder in Directory.EnumerateDirectories("/proc").Where(d => int.TryParse(Path.GetFileName(d), out _)))
        {
            string[] arguments;
            try
            {
                arguments = (await File.ReadAllTextAsync(Path.Combine(folder, "cmdline"), Ct)).Split('\0');
            }
            catch (IOException)
            {
                continue; // it ended meanwhile
            }

            if (!arguments.Any(a => a == "--user-data-dir=" + memory)) continue;
            using var process = Process.GetProcessById(int.Parse(Path.GetFileName(folder), CultureInfo.InvariantCulture));
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync(Ct);
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.CloseAsync();
        Directory.Delete(memory, recursive: true);
    }

    /// <summary>
    /// By turns a reading, an oiling, a tensioning, an inspection with a photo, and one that the server must refuse: it says that
    /// it was measured in a month.
    /// </summary>
    private const string Entering = """
        async ({ chainId, chain, by, from, count }) => {
          const { keepAll } = await import('/floor/outbox.js');
          const canvas = new OffscreenCanvas(16, 16);
          canvas.getContext('2d').fillRect(0, 0, 8, 8);
          const photo = await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer();
          const told = [];
          for (let i = from; i < from + count; i++) {
            const about = { chain, chainId, words: `entry ${i}` };
            const body = { chain, chain_id: chainId, taken_at: new Date().toISOString(), told_by: by };
            const reading = { ...about, kind: 'measure', path: '/api/v1/readings',
              body: { ...body, counter_h: 5000 + i / 100, tool: 'tape', pitches: 48, length: '1234.5', unit: 'mm' } };
            const event = kind => ({ ...about, kind: 'done', path: '/api/v1/events', body: { ...body, event: kind } });
            const id = crypto.randomUUID();
            const all = [
              () => [reading],
              () => [event('oiling')],
              () => [event('tensioned')],
              () => [
                { ...about, id, kind: 'inspect', path: '/api/v1/inspections',
                  body: { ...body, findings: [{ point: 'stiff_joints', found: true, note: 'dry' }] } },
                { ...about, kind: 'photo', path: `/api/v1/inspections/${id}/photos/stiff_joints`, bytes: photo,
                  type: 'image/jpeg' },
              ],
              () => [{ ...reading, body: { ...reading.body, taken_at: new Date(Date.now() + 30 * 864e5).toISOString() } }],
            ][i % 5]();
            try {
              const kept = await keepAll(all);
              told.push(...kept.map(entry => ({ id: entry.id, kind: i % 5 === 4 ? 'refused' : entry.kind })));
            } catch {
              // The phone said that it is not kept.
            }
          }
          return JSON.stringify(told);
        }
        """;
}

/// <summary>An entry that a phone said it keeps.</summary>
internal sealed record KeptEntry(string Id, string Kind);
