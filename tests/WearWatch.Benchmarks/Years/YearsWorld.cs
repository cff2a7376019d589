using WearWatch.Benchmarks.Worlds;

namespace WearWatch.Benchmarks.Years;

/// <summary>A world in which a mill lives ten years.</summary>
/// <param name="Name">Its name in the table.</param>
/// <param name="Physics">How its chains wear.</param>
/// <param name="RateOf">By how much faster a chain wears that was fitted in a year counted from the first, 0.</param>
internal sealed record YearsWorld(string Name, World Physics, Func<double, double> RateOf)
{
    private const double UsualRate = 0.25;

    /// <summary>All six. Their figures are assumptions.</summary>
    public static YearsWorld[] All { get; } =
    [
        Of("default", new World("default", chance => Accelerating(chance, 0.35))),
        Of("shifted", new World("shifted", Shifted) { RunInPercent = c => c.About(0.35, 0.3), RunInHours = 80 }),
        Of("knee", Foreign("knee")),
        Of("bedding-in", Foreign("bedding-in")),
        Of("season", Foreign("season")),
        new("bad lot", new World("bad lot", chance => Accelerating(chance, 0.25)), year => year is >= 4 and < 5.5 ? 3 : 1),
    ];

    private static YearsWorld Of(string name, World physics) => new(name, physics, _ => 1);

    private static World Foreign(string name) => ForeignWorlds.All.Single(w => w.Name == name);

    /// <summary>Even wear that goes faster once the hardened layer is through.</summary>
    private static Func<double, double> Accelerating(Chance chance, double deviation)
    {
        var (rate, onset) = (chance.About(UsualRate, deviation) / 1000, chance.Between(2.1, 2.9));
        return hours => rate * hours < onset ? rate * hours : onset + 2 * (rate * hours - onset);
    }

    /// <summary>Faster and more various than usual, with jumps of the rate when an oiler fails.</summary>
    private static Func<double, double> Shifted(Chance chance)
    {
        var (rate, wear, last, next) = (chance.About(0.4, 0.5) / 1000, 0.0, 0.0, chance.Wait(6000));
        return hours =>
        {
            for (; next < hours; next += chance.Wait(6000))
            {
                (wear, last) = (wear + rate * (next - last), next);
                rate *= chance.Share() < 0.8 ? 2 : 0.6;
            }

            (wear, last) = (wear + rate * (hours - last), hours);
            return wear;
        };
    }
}
