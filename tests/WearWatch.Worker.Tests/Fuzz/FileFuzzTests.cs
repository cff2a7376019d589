using System.Text;
using Microsoft.EntityFrameworkCore;

namespace WearWatch.Worker.Tests.Fuzz;

/// <summary>
/// Files that nobody meant, from a fixed seed: each is read to its end with its faults named, and nothing wrong is taken.
/// </summary>
public sealed class FileFuzzTests
{
    private const int Files = 2_000;
    private const int Seed = 22;

    private static readonly string[] sources = ["chains.csv", "events.csv", "readings.csv"];

    private static readonly string[] odd =
    [
        "0001-01-01", "9999-12-31T23:59", "2026-03-29T02:30", "-1", "1e309", "\"", "\0", "=1+1", ";", ",,,", "\u2028", "NaN",
        "1.234,5",
        "'; DROP TABLE Readings; --", "99999999999999999999", "\ud800", "\r", "\t",
    ];

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task No_file_is_a_fault_of_ours_and_memory_stays_bounded()
    {
        await using var plant = await TestPlant.OpenAsync();
        var dice = new Random(Seed);
        var good = sources.Select(f => File.ReadAllLines(Path.Combine(A.Data("fleet"), f))).ToArray();
        var before = GC.GetTotalMemory(forceFullCollection: true);
        for (var i = 0; i < Files; i++)
        {
            var file = A.File($"fuzz-{i}.csv", Bent(dice, good[dice.Next(good.Length)]));
            if (i % 20 == 0) await plant.Import.ImportAsync([file], null, Ct);
            else await plant.Import.PreviewAsync([file], null, Ct);
        }

        Assert.InRange(GC.GetTotalMemory(forceFullCollection: true) - before, long.MinValue, 100_000_000);
        await using var db = plant.Db();
        Assert.False(await db.Readings.AnyAsync(r => r.Pitches < 1 || r.LengthMm <= 0 || r.CounterH < 0, Ct));
        Assert.False(await db.Chains.AnyAsync(c => c.PitchMm <= 0 || c.Name == "", Ct));
    }

    private static byte[] Bent(Random dice, string[] lines)
    {
        var from = dice.Next(Math.Max(1, lines.Length - 12));
        var text = new StringBuilder(dice.Next(20) == 0 ? "" : lines[0] + "\n");
        foreach (var line in lines.Skip(1 + from).Take(dice.Next(1, 12)))
        {
            var fields = line.Split(',');
            for (var n = dice.Next(3); n > 0; n--) fields[dice.Next(fields.Length)] = odd[dice.Next(odd.Length)];
            text.AppendJoin(dice.Next(15) == 0 ? ';' : ',', fields).Append(dice.Next(10) == 0 ? "\r" : "\n");
        }

        var bytes = (dice.Next(8) == 0 ? Encoding.Unicode : Encoding.UTF8).GetBytes(text.ToString());
        for (var n = dice.Next(4) == 0 ? dice.Next(6) : 0; n > 0 && bytes.Length > 0; n--)
            bytes[dice.Next(bytes.Length)] = (byte)dice.Next(256);
        return bytes;
    }
}
