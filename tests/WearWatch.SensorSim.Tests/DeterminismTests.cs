using System.Security.Cryptography;

namespace WearWatch.SensorSim.Tests;

public sealed class DeterminismTests : IDisposable
{
    private static readonly string[] Names =
        ["chains.csv", "readings.csv", "events.csv", "truth/readings.csv", "truth/events.csv", "truth/chains.csv"];

    private readonly string folder = Directory.CreateTempSubdirectory("mill-").FullName;

    [Fact]
    public void The_same_seed_gives_the_same_bytes()
    {
        var (first, second) = (Write("first", seed: 5), Write("second", seed: 5));
        Assert.All(Names, name => Assert.Equal(Bytes(first, name), Bytes(second, name)));
    }

    // Oracle: the bytes of an earlier run in another process. They change when the mill is changed on purpose, never by
    // themselves: pictures in the documents are taken of this mill.
    [Theory]
    [InlineData("chains.csv", "f8079d86f1d15eb3155e98c4405574f5ef9a534f2f621fc640564d9ed5b67650")]
    [InlineData("readings.csv", "a65aea8c56b60e2f19dcd72140389f28715657681563c13d75b76136f494d894")]
    [InlineData("events.csv", "6c66f677e5cb51d4bb43bb9ee4e00abfd5d50ada054265641f11b350322871c4")]
    [InlineData("truth/readings.csv", "7e91d897260e119f00001b93c010e8f6c435c209bec095bbfe3f684e207362d7")]
    public void The_bytes_are_those_of_every_run_before(string name, string sha256) =>
        Assert.Equal(sha256, Convert.ToHexStringLower(SHA256.HashData(Bytes(Write("pinned", seed: 5), name))));

    [Fact]
    public void Another_seed_gives_other_readings()
    {
        var (first, second) = (Write("first", seed: 5), Write("second", seed: 6));
        Assert.NotEqual(Bytes(first, "readings.csv"), Bytes(second, "readings.csv"));
    }

    [Fact]
    public void The_same_moment_told_in_another_time_zone_gives_the_same_mill()
    {
        var elsewhere = new Mill(A.HistoryEnd.ToOffset(TimeSpan.FromHours(-7)), seed: 11);
        Assert.Equal(Readings(A.Mill()), Readings(elsewhere));
    }

    [Fact]
    public void Looking_ahead_changes_nothing_in_the_past()
    {
        var mill = A.Mill();
        var before = Readings(mill);
        Assert.NotEmpty(mill.Histories.SelectMany(history => history.Readings.Between(mill.EndsAt, mill.EndsAt.AddYears(2))));

        Assert.Equal(before, Readings(mill));
    }

    [Fact]
    public void Files_already_there_are_replaced()
    {
        var first = Write("again", seed: 5);
        var size = new FileInfo(Path.Combine(first, "readings.csv")).Length;
        Write("again", seed: 5);

        Assert.Equal(size, new FileInfo(Path.Combine(first, "readings.csv")).Length);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(10)]
    public void Records_of_one_or_ten_years_are_written_just_so(int years)
    {
        var mill = A.Mill(years: years);
        var size = MillHistory.WriteTo(folder, mill);

        Assert.Equal(mill.EndsAt.AddYears(-years), mill.StartsAt);
        Assert.Equal(80, size.Chains);
        Assert.InRange(size.Readings, 900 * years, 1_800 * years);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(11)]
    public void Records_reach_back_one_to_ten_years(int years) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(years), () => A.Mill(years: years));

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static List<LiveReading> Readings(Mill mill) =>
        [.. mill.Histories.SelectMany(h => h.Readings.Between(mill.StartsAt, mill.EndsAt))];

    private static byte[] Bytes(string folder, string name) => File.ReadAllBytes(Path.Combine(folder, name));

    private string Write(string name, int seed)
    {
        var path = Path.Combine(folder, name);
        MillHistory.WriteTo(path, A.HistoryEnd, seed);
        return path;
    }
}
