namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What an import made of its files.</summary>
internal sealed record ImportJson(int Taken, int AlreadyKnown, int Waiting, int Refused, IReadOnlyList<ImportedFileJson> Files);
