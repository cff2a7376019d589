namespace WearWatch.Benchmarks.Worlds;

/// <summary>A plant whose chains wear by a law of its own, for the method to meet without having been told.</summary>
/// <param name="Name">Its name in the table.</param>
/// <param name="Wear">
/// The steady wear of one chain in percent over its running hours, asked at hours that never fall; what is left of the run-in and
/// the new chain's length come on top.
/// </param>
internal sealed record World(string Name, Func<Chance, Func<double, double>> Wear)
{
    /// <summary>Run-in of a chain, in percent.</summary>
    public Func<Chance, double> RunInPercent { get; init; } = chance => Math.Clamp(0.2 + 0.06 * chance.Normal(), 0.02, 0.5);

    /// <summary>Running hours in which all but 1/e of the run-in is done.</summary>
    public double RunInHours { get; init; } = 35;

    /// <summary>Standard deviation, in percent, of what each of six persons adds to every reading they take.</summary>
    public double PersonPercent { get; init; }
}
