using System.Text.Json.Serialization;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>The state of a chain that lifts. No verdict releases it.</summary>
internal sealed record LiftingJson
{
    public required string Chain { get; init; }

    /// <summary>nothing_stands (which is no release), attend, examine_first or out_of_use.</summary>
    public required string Verdict { get; init; }

    /// <summary>The verdict in words.</summary>
    public required string Words { get; init; }

    /// <summary>What stands against its use, worst first.</summary>
    public required IReadOnlyList<LiftingFaultJson> Faults { get; init; }

    /// <summary>in_use, quarantined or disposed, by what people did.</summary>
    public required string Standing { get; init; }

    public required bool HasCertificate { get; init; }

    public DateTimeOffset? LookedAt { get; init; }

    public DateTimeOffset? MeasuredAt { get; init; }

    public DateOnly? ExaminedOn { get; init; }

    public DateOnly? ExaminationDue { get; init; }

    public DateOnly? RemedyBy { get; init; }

    public int? IntervalMonths { get; init; }

    public required string IntervalSource { get; init; }

    /// <summary>How the interval's rule is known: published, second hand, from memory.</summary>
    public required string IntervalCertainty { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }
}

/// <summary>One thing that stands against its use.</summary>
internal sealed record LiftingFaultJson(string Kind, string Words);

/// <summary>A chain of the register with its entry, reports and steps.</summary>
internal sealed record LiftingChainJson(
    LiftingJson State, LiftingCardJson? Entry, IReadOnlyList<ExaminationJson> Examinations, IReadOnlyList<LiftingStepJson> Steps,
    IReadOnlyList<LiftingPaperJson> Papers);

/// <summary>What the register says of a lifting chain. Sent, basis is the id of the entry that it changes.</summary>
internal sealed record LiftingCardJson
{
    public long? Id { get; init; }

    public long? Basis { get; init; }

    public DateTimeOffset? At { get; init; }

    public string? By { get; init; }

    public string? Why { get; init; }

    public string? Use { get; init; }

    public double? WorkingLoadKg { get; init; }

    public string? WorkingLoadOf { get; init; }

    public string? CertificateNumber { get; init; }

    public DateOnly? CertificateOn { get; init; }

    public long? CertificateFile { get; init; }

    public DateOnly? ProofTestOn { get; init; }

    public double? ProofLoadKg { get; init; }

    public string? ProofTestNumber { get; init; }

    public string? Maker { get; init; }

    public string? Standard { get; init; }

    public string? Grade { get; init; }

    public string? TraceMark { get; init; }

    public string? ChainSet { get; init; }

    public string? Region { get; init; }

    public bool? LiftsPersons { get; init; }

    public bool? HeavyUse { get; init; }

    public int? LiftsPerWeek { get; init; }

    public int? ExaminationMonths { get; init; }

    public string? WrittenScheme { get; init; }

    [JsonPropertyName("written_scheme_file")]
    public long? WrittenSchemeFile { get; init; }
}

/// <summary>The report of a thorough examination; a point that is left out was not examined.</summary>
internal sealed record ExaminationJson
{
    public long? Id { get; init; }

    public DateOnly? On { get; init; }

    public string? Examiner { get; init; }

    public string? ExaminerAddress { get; init; }

    public string? Occasion { get; init; }

    public string? Result { get; init; }

    public IReadOnlyList<PointResultJson>? Points { get; init; }

    public string? Remarks { get; init; }

    public DateOnly? RemedyBy { get; init; }

    public DateOnly? NextOn { get; init; }

    public string? ReportNumber { get; init; }

    public long? File { get; init; }

    public double? CounterH { get; init; }

    public string? ToldBy { get; init; }
}

/// <summary>A point of a report: outcome not_examined, nothing_found or found.</summary>
internal sealed record PointResultJson(string? Point, string? Outcome, string? Measured, string? Note);

/// <summary>A quarantine, release or disposal.</summary>
internal sealed record LiftingStepJson
{
    public long? Id { get; init; }

    public string? Kind { get; init; }

    public DateTimeOffset? At { get; init; }

    public string? By { get; init; }

    public string? Reason { get; init; }

    public IReadOnlyList<string>? Closes { get; init; }

    public int? Appointment { get; init; }
}

/// <summary>A scanned paper; the file itself is under /lifting/papers/{id}.</summary>
internal sealed record LiftingPaperJson(long Id, string Kind, string Name, DateTimeOffset ReceivedAt, string ToldBy);
