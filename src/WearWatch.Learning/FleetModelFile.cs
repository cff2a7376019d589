using System.IO.Compression;
using System.Text.Json;
using Microsoft.ML;

namespace WearWatch.Learning;

/// <summary>A saved fleet model: an archive of the statistics, the pipeline and the version that they must give.</summary>
internal static class FleetModelFile
{
    private const string StatisticsEntry = "statistics.json";
    private const string PipelineEntry = "pipeline.zip";
    private const string VersionEntry = "version.txt";

    public static void Write(Stream stream, FleetStatistics statistics, MLContext ml, ITransformer pipeline)
    {
        using var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true);
        using (var entry = archive.CreateEntry(StatisticsEntry).Open())
            JsonSerializer.Serialize(entry, statistics, FleetJson.Default.FleetStatistics);

        // ML.NET seeks in the stream that it writes to, which the entry of an archive does not allow.
        using var saved = new MemoryStream();
        ml.Model.Save(pipeline, FleetPipeline.Rows(ml, statistics.Line.Design.Width, []).Schema, saved);
        using (var entry = archive.CreateEntry(PipelineEntry, CompressionLevel.NoCompression).Open()) entry.Write(
            saved.ToArray());

        using (var entry = new StreamWriter(archive.CreateEntry(VersionEntry).Open()))
            entry.Write(FleetVersion.Of(statistics, pipeline));
    }

    public static FleetModel Read(Stream stream)
    {
        using var archive = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
        using var statisticsStream = Entry(archive, StatisticsEntry);
        var statistics = Statistics(statisticsStream);

        using var pipelineStream = Entry(archive, PipelineEntry);
        var ml = FleetPipeline.Context(seed: 0);
        var model = new FleetModel(statistics, ml, ml.Model.Load(pipelineStream, out _));

        using var version = new StreamReader(Entry(archive, VersionEntry));
        return version.ReadToEnd() == model.Version
            ? model
            : throw new InvalidDataException(
                "The fleet model's content does not give the version that it names: the file is damaged.");
    }

    private static FleetStatistics Statistics(Stream stream)
    {
        try
        {
            var statistics = JsonSerializer.Deserialize(stream, FleetJson.Default.FleetStatistics)
                ?? throw new InvalidDataException("The file holds no statistics of a fleet model.");
            return statistics.Line.Design.Inputs.All(input => input.FitsThisProgram)
                ? statistics
                : throw new InvalidDataException("The fleet model was saved by a program that knew other kinds of chain.");
        }
        catch (JsonException error)
        {
            throw new InvalidDataException("The fleet model is damaged, or was saved by another version of this program.", error);
        }
    }

    private static MemoryStream Entry(ZipArchive archive, string name)
    {
        using var entry =
            (archive.GetEntry(name) ?? throw new InvalidDataException($"The file is no fleet model: it has no {name}.")).Open();
        var copy = new MemoryStream();
        entry.CopyTo(copy);
        copy.Position = 0;
        return copy;
    }
}
