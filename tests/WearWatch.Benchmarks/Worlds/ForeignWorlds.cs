namespace WearWatch.Benchmarks.Worlds;

/// <summary>Worlds of a physics that the method does not suppose. Their figures are assumptions.</summary>
internal static class ForeignWorlds
{
    private const double YearHours = 5000;
    private const double RateDeviation = 0.35;

    /// <summary>All of them, the quiet one first.</summary>
    public static World[] All { get; } =
    [
        new("linear", chance => Even(Rate(chance))),
        new("t^0.7", chance => Power(chance, 0.7)),
        new("t^1.4", chance => Power(chance, 1.4)),
        new("saturating", Saturating),
        new("bedding-in", chance => Even(Rate(chance))) { RunInPercent = c => c.About(0.6, 0.2), RunInHours = 1000 },
        new("knee", Knee),
        new("oiling", chance => Cycles(chance, 0.6, chance.Between(250, 600))),
        new("season", chance => Cycles(chance, 0.7, YearHours)),
        new("regimes", Regimes),
        new("counter", Counter),
        new("walk", Walk),
        new("persons", chance => Even(Rate(chance))) { PersonPercent = 0.1 },
    ];

    private static double Rate(Chance chance) => chance.About(0.25, RateDeviation) / 1000;

    private static Func<double, double> Even(double rate) => hours => rate * hours;

    private static Func<double, double> Power(Chance chance, double power)
    {
        var lifeHours = chance.About(11_000, RateDeviation);
        return hours => 2.8 * Math.Pow(hours / lifeHours, power);
    }

    private static Func<double, double> Saturating(Chance chance)
    {
        var (highest, time) = (chance.Between(3.8, 4.2), chance.About(9000, RateDeviation));
        return hours => highest * (1 - Math.Exp(-hours / time));
    }

    private static Func<double, double> Knee(Chance chance)
    {
        var (rate, knee) = (Rate(chance), chance.Between(1.3, 2.3));
        return hours => rate * hours < knee ? rate * hours : knee + 3 * (rate * hours - knee);
    }

    /// <summary>A rate that swings about its mean with a period; each chain was fitted at another moment of it.</summary>
    private static Func<double, double> Cycles(Chance chance, double share, double period)
    {
        var (rate, start) = (Rate(chance), chance.Share());
        return hours => rate * (hours + share * period / (2 * Math.PI)
            * (Math.Cos(2 * Math.PI * start) - Math.Cos(2 * Math.PI * (hours / period + start))));
    }

    /// <summary>Two loads by turns, each for some 1,500 h, one of them three times as hard.</summary>
    private static Func<double, double> Regimes(Chance chance)
    {
        var (rate, hard) = (Rate(chance), chance.Share() < 0.5);
        var until = chance.Wait(1500);
        return Summed(hours =>
        {
            for (; hours > until; until += chance.Wait(1500)) hard = !hard;
            return rate * (hard ? 1.5 : 0.5);
        });
    }

    /// <summary>The counter runs while the drive does, loaded or not; the loaded share changes from month to month.</summary>
    private static Func<double, double> Counter(Chance chance)
    {
        var (rate, usual, loaded, until) = (Rate(chance) / 0.6, chance.Between(0.45, 0.75), 0.6, 0.0);
        return Summed(hours =>
        {
            for (; hours > until; until += 400) loaded = Math.Clamp(usual + 0.25 * chance.Normal(), 0.05, 1);
            return rate * loaded;
        });
    }

    /// <summary>ln(rate) a random walk, by 0.3 in 1,000 h.</summary>
    private static Func<double, double> Walk(Chance chance)
    {
        var (logRate, last) = (Math.Log(Rate(chance)), 0.0);
        return Summed(hours =>
        {
            logRate += 0.3 * Math.Sqrt((hours - last) / 1000) * chance.Normal();
            last = hours;
            return Math.Exp(logRate);
        });
    }

    private static Func<double, double> Summed(Func<double, double> rateAt)
    {
        var (wear, last) = (0.0, 0.0);
        return hours =>
        {
            wear += (hours - last) * rateAt(hours);
            last = hours;
            return wear;
        };
    }
}
