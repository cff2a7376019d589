namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>How a chain wears against what such a chain is expected to.</summary>
/// <param name="Name">The chain.</param>
/// <param name="Line">Its line.</param>
/// <param name="Rate">Its wear rate in percent per 1,000 h.</param>
/// <param name="Expected">The rate that the fleet model expects of its card.</param>
/// <param name="Low">Lower end of the 90 % interval of rate over expected.</param>
/// <param name="High">Upper end of it.</param>
/// <param name="Readings">Readings behind it.</param>
/// <param name="Hints">What may explain it, as far as the records tell.</param>
public sealed record AgainstExpectation(
    string Name, string Line, double Rate, double Expected, double Low, double High, int Readings, IReadOnlyList<string> Hints)
{
    public double Ratio => Rate / Expected;
}
