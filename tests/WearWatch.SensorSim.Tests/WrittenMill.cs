namespace WearWatch.SensorSim.Tests;

/// <summary>A mill whose history has been written once for all tests of a class, and read back from its files.</summary>
public sealed class WrittenMill : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("mill-").FullName;

    public WrittenMill()
    {
        Mill = A.Mill();
        Size = MillHistory.WriteTo(folder, Mill);
        Chains = CsvTable.Read(File("chains.csv"));
        Readings = CsvTable.Read(File("readings.csv"));
        Events = CsvTable.Read(File("events.csv"));
        Truth = CsvTable.Read(File("truth/readings.csv"));
        TruthOfEvents = CsvTable.Read(File("truth/events.csv"));
        TruthNow = CsvTable.Read(File("truth/chains.csv"));
    }

    public Mill Mill { get; }

    public MillHistorySize Size { get; }

    internal CsvTable Chains { get; }

    internal CsvTable Readings { get; }

    internal CsvTable Events { get; }

    internal CsvTable Truth { get; }

    internal CsvTable TruthOfEvents { get; }

    internal CsvTable TruthNow { get; }

    public string File(string name) => System.IO.Path.Combine(folder, name);

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
