namespace WearWatch.Worker.Intake;

/// <summary>Takes in files of chains, readings and events; the same file twice changes nothing.</summary>
public sealed class FileImport
{
    /// <summary>Tells what an import would do; nothing is stored.</summary>
    public Task<ImportReport> PreviewAsync(
        IReadOnlyList<ImportFile> files, IProgress<ImportProgress>? progress = null, CancellationToken ct = default) =>
        throw new NotImplementedException();

    /// <summary>Takes the files in and assesses the chains concerned.</summary>
    public Task<ImportReport> ImportAsync(
        IReadOnlyList<ImportFile> files, IProgress<ImportProgress>? progress = null, CancellationToken ct = default) =>
        throw new NotImplementedException();
}
