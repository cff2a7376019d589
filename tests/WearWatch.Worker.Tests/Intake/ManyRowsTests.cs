using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Worker.Tests.Intake;

/// <summary>Tests that measure memory run alone.</summary>
[CollectionDefinition(nameof(Alone), DisableParallelization = true)]
public sealed class Alone;

[Collection(nameof(Alone))]
public sealed class ManyRowsTests
{
    private const int Rows = 200_000;

    [Fact]
    public async Task Two_hundred_thousand_rows_are_read_in_chunks_and_never_held_at_once()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.AddChainAsync();
        var path = Path.Combine(plant.Folder.Root, "readings.csv");
        await using (var writer = new StreamWriter(path))
        {
            await writer.WriteLineAsync(A.ReadingsHeader);
            for (var i = 0; i < Rows; i++)
                await writer.WriteLineAsync(i % 4 == 3 ? $"C1,,{i},tape,,0,1020,mm," : A.Row(counterH: i));
        }

        var memory = new Peak();
        var report = await plant.Import.PreviewAsync(
            [ImportFile.OnDisk(path, "Ina")], memory, TestContext.Current.CancellationToken);
        Assert.Equal((Rows / 4 * 3, Rows / 4), (report.Taken, report.Refused));
        Assert.Equal((Rows / 4, FileReport.MostRemarks), (report.Files[0].RemarkCount, report.Files[0].Remarks.Count));
        // 200,000 rows held as objects would take over 100 MB; a fingerprint each takes 40 bytes.
        Assert.InRange(memory.Bytes, 0, 60_000_000);
    }

    private sealed class Peak : IProgress<ImportProgress>
    {
        private readonly long before = GC.GetTotalMemory(forceFullCollection: true);

        public long Bytes { get; private set; }

        public void Report(ImportProgress value)
        {
            if (value.Rows % 40_000 == 0) Bytes = Math.Max(Bytes, GC.GetTotalMemory(forceFullCollection: true) - before);
        }
    }
}
