namespace WearWatch.Benchmarks.Passes;

/// <summary>Sensors that do not stay where they are, from day to day; towards either side by chance.</summary>
internal static class PassCourses
{
    /// <summary>The day before which an overnight move comes.</summary>
    public const int MoveDay = 7;

    /// <summary>By so much each day.</summary>
    public static Func<Random, Func<int, double>> Creep(double mmPerDay) => random =>
    {
        var signed = Signed(random, mmPerDay);
        return day => signed * day;
    };

    /// <summary>Once, before a day.</summary>
    public static Func<Random, Func<int, double>> Overnight(double mm, int before) => random =>
    {
        var signed = Signed(random, mm);
        return day => day < before ? 0 : signed;
    };

    private static double Signed(Random random, double mm) => random.Next(2) == 0 ? mm : -mm;
}
