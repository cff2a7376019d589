using System.Text.Json;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// A finger in a glove bounces: the second and third tap fall, up to 400 ms later, on whatever stands there by then. That doubles
/// no entry, confirms nothing, withdraws nothing and throws nothing away.
/// </summary>
/// <remarks>
/// Every run taps a tenth of the thousand; <c>tests/run --long</c> all. In a plant of its own: the fingers take rounds, too, and
/// who has taken one sees only its lines.
/// </remarks>
public sealed class BounceTests(Screen screen, StillPlant own) : IClassFixture<StillPlant>
{
    private const int Fingers = 4;
    private readonly FloorPlant plant = new(screen, own);

    [Fact]
    public Task No_bouncing_finger_doubles_or_confirms_anything() => BounceAsync("BOUNCE", taps: 100, seed: 7);

    [Fact(Explicit = true)]
    public Task No_bouncing_finger_doubles_or_confirms_anything_in_a_thousand_taps() =>
        BounceAsync("BOUNCES", taps: 1000, seed: 8);

    private async Task BounceAsync(string name, int taps, int seed)
    {
        var (id, _) = await plant.TakeInAsync(name);
        var hands = await Task.WhenAll(Enumerable.Range(0, Fingers).Select(i => HandAsync(id, taps / Fingers, seed + i)));
        var seen = hands.SelectMany(h => h.Tapped).Distinct().Order().ToList();
        TestContext.Current.TestOutputHelper!.WriteLine(
            $"{hands.Sum(h => h.Taps)} taps that bounced, on: {string.Join("; ", seen)}");
        Assert.True(hands.Sum(h => h.Taps) >= taps * 0.9);
        Assert.Contains(seen, text => text == "Save");
        Assert.Contains(seen, text => text.StartsWith("Record", StringComparison.Ordinal));
        Assert.Empty(hands.SelectMany(h => h.Faults));
    }

    private async Task<Hand> HandAsync(int chain, int taps, int seed)
    {
        await using var phone = await plant.PhoneAsync();
        await phone.Page.GotoAsync($"{own.Address}/floor/");
        await phone.Page.ReadyAsync();
        await phone.Page.Context.SetOfflineAsync(seed % 2 == 0);
        var told = await phone.Page.EvaluateAsync<string>(Bouncing, new { chain, taps, seed });
        return JsonSerializer.Deserialize<Hand>(told, JsonSerializerOptions.Web)!;
    }

    private sealed record Hand(int Taps, List<string> Tapped, List<string> Faults);

    /// <summary>
    /// Opens a screen, fills its fields with what fits, is doubtful or cannot be, taps a button at random two or three times at
    /// one place, and looks at what the phone keeps by then.
    /// </summary>
    private const string Bouncing = """
        async ({ chain, taps, seed }) => {
          let state = seed;
          const chance = n => (state = (state * 48271) % 2147483647) % n;
          const wait = ms => new Promise(done => setTimeout(done, ms));
          const { entries } = await import('/floor/store.js');
          const screens = ['', 'kept', 'find', 'who', ...['', 'measure', 'measure', 'measure', 'inspect', 'do?what=oiling',
            'do?what=tensioned', 'do?what=meter_reset'].map(s => `chain/${chain}/${s}`)];
          const lengths = ['1234.5', '1260.1', '1600', '972', '30000'];
          const [tapped, faults] = [new Set(), []];
          let bounced = 0;
          for (let i = 0; bounced < taps && i < 3 * taps; i++) {
            const hash = `#/${screens[chance(screens.length)]}`;
            document.documentElement.dataset.shown = '';
            if (location.hash === hash) dispatchEvent(new Event('hashchange')); else location.hash = hash;
            for (let n = 0; n < 200 && document.documentElement.dataset.shown === ''; n++) await wait(10);
            for (const input of document.querySelectorAll('#content form input:not([type])')) {
              input.value = input.closest('.lengths') ? lengths[chance(5)] : input.id === 'pitches' ? '48'
                : input.inputMode === 'text' ? '' : '5000';
              input.dispatchEvent(new Event('input', { bubbles: true }));
            }
            for (const found of document.querySelectorAll('.point input[value=fine]')) found.click();
            if (chance(3) > 0) await wait(750);
            const before = await entries();
            const all = [...document.querySelectorAll('#content button, #content a.button, #undo button')]
              .filter(b => b.offsetParent && !b.disabled && !b.closest('.pad') && !b.getAttribute('href')?.startsWith('/'));
            const main = all.filter(b => /primary|grave/.test(b.className));
            const choice = chance(2) && main.length ? main : all;
            const target = choice[chance(choice.length)];
            if (!target) continue;
            target.scrollIntoView({ block: 'center' });
            const box = target.getBoundingClientRect();
            const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
            tapped.add(target.textContent.trim().slice(0, 30));
            const times = 2 + chance(2);
            let [last, longest] = [performance.now(), 0];
            for (let n = 0; n < times; n++) {
              const under = document.elementFromPoint(x, y)?.closest('button, a, label, input, summary');
              longest = Math.max(longest, performance.now() - last);
              last = performance.now();
              if (under && !under.getAttribute('href')?.startsWith('/')) under.click();
              await wait(n === times - 1 ? 60 : chance(401));
            }
            if (longest > 500) continue; // a busy machine made two taps of a bounce
            bounced++;
            const after = await entries();
            const fresh = after.filter(e => before.every(b => b.seq !== e.seq));
            const groups = new Set(fresh.map(e => e.group));
            const at = `${hash} '${target.textContent.trim()}' x${times}`;
            if (groups.size > 1) faults.push(`${at}: ${groups.size} entries`);
            if (fresh.some(e => e.body?.confirmed)) faults.push(`${at}: confirmed`);
            if (fresh.some(e => e.kind === 'answer')) faults.push(`${at}: answered`);
            if (after.some(e => e.state === 'thrown')) faults.push(`${at}: thrown away`);
          }
          return JSON.stringify({ taps: bounced, tapped: [...tapped], faults });
        }
        """;
}
