namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What an import made of one file; at most 1,000 remarks are told, their count is exact.</summary>
internal sealed record ImportedFileJson(
    string File, string Kind, int Taken, int AlreadyKnown, int Waiting, int Refused, int RemarkCount,
    IReadOnlyList<RemarkJson> Remarks);
