using System.Diagnostics;

namespace WearWatch.Servers.Tests.Kills;

/// <summary>Kills a command at random moments of its work, by a fixed seed, until it was caught at work so many times.</summary>
internal sealed class KillMoments(KilledProgram program)
{
    /// <summary>The kinds of work that are killed are five: a hundred kills on each engine.</summary>
    public const int Each = 20;

    /// <summary>In the first part of its time a program only starts.</summary>
    private const double FirstShare = 0.35;

    private const int Seed = 22;

    private readonly Random chance = new(Seed);

    /// <summary>Kills it.</summary>
    /// <param name="whole">The command, run to its end once, to know how long it takes.</param>
    /// <param name="prepare">Makes a round ready and says its command.</param>
    /// <param name="check">Looks at what a round left, by what the command had written.</param>
    public async Task KillAsync(Func<Task> whole, Func<int, Task<string[]>> prepare, Func<int, string, Task> check)
    {
        var began = Stopwatch.GetTimestamp();
        await whole();
        var takes = Stopwatch.GetElapsedTime(began);
        for (int round = 1, kills = 0; kills < Each; round++)
        {
            Assert.True(round < 4 * Each, "It ended before it could be killed again and again.");
            var words = await prepare(round);
            var share = FirstShare + (1 - FirstShare) * chance.NextDouble();
            var (wasAtWork, output) = await program.KillAsync(share * takes, words);
            if (wasAtWork) kills++;
            else takes *= 0.95; // the machine has become faster
            await check(round, output);
        }
    }
}
