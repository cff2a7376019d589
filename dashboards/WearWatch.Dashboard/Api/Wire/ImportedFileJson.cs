namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What an import made of one file; at most 1,000 remarks are told, their count is exact.</summary>
internal sealed record ImportedFileJson
{
    public required string File { get; init; }

    public required string Kind { get; init; }

    public required int Taken { get; init; }

    public required int AlreadyKnown { get; init; }

    public required int Waiting { get; init; }

    public required int Refused { get; init; }

    public required int RemarkCount { get; init; }

    public required IReadOnlyList<RemarkJson> Remarks { get; init; }
}
