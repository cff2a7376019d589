namespace WearWatch.Storage.Rows;

/// <summary>A trained fleet model. Rows are only ever added.</summary>
public sealed class FleetModelRow
{
    public int Id { get; init; }

    public required string Version { get; init; }

    public DateTimeOffset TrainedAt { get; init; }

    public int Chains { get; init; }

    /// <summary>The saved model.</summary>
    public required byte[] Model { get; init; }

    /// <summary>The training report as JSON: cross-validation, effects, what was skipped.</summary>
    public required string Report { get; init; }
}
