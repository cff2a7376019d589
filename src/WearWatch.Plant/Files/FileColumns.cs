namespace WearWatch.Plant.Files;

/// <summary>The columns of one kind of file.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="All">Every column that is read, in the order in which they are written.</param>
/// <param name="Required">Those that must be there.</param>
/// <param name="OneOf">Of these at least one must be there; empty for no such choice.</param>
public sealed record FileColumns(
    FileKind Kind, IReadOnlyList<string> All, IReadOnlyList<string> Required, IReadOnlyList<string> OneOf)
{
    /// <summary>The register of chains; see <see cref="ChainColumns"/>.</summary>
    public static FileColumns Chains { get; } = new(
        FileKind.Chains,
        ["chain", .. ChainColumns.All.Select(c => c.Name)],
        ["chain"], ["chain_type", "pitch_mm"]);

    /// <summary>Readings.</summary>
    public static FileColumns Readings { get; } = new(
        FileKind.Readings,
        ["chain", .. ReadingColumns.All.Select(c => c.Name)],
        ["chain", "tool", "pitches", "length", "unit"], ["taken_at", "counter_h"]);

    /// <summary>Events.</summary>
    public static FileColumns Events { get; } = new(
        FileKind.Events,
        ["chain", .. EventColumns.All.Select(c => c.Name)],
        ["chain", "event"], ["taken_at", "counter_h_before", "counter_h_after"]);

    /// <summary>Measures of the links of round-link chains; see <see cref="LinkMeasureText"/>.</summary>
    public static FileColumns LinkMeasures { get; } = new(
        FileKind.LinkMeasures, LinkMeasureText.Columns, ["chain", "place", "unit"], ["taken_at", "counter_h"]);

    /// <summary>Readings of parts beside the elongation; see <see cref="PartReadingText"/>.</summary>
    public static FileColumns PartReadings { get; } = new(
        FileKind.PartReadings, PartReadingText.Columns, ["chain", "part", "value", "unit"], ["taken_at", "counter_h"]);

    /// <summary>Reports on work orders; see <see cref="WorkOrderText"/>.</summary>
    public static FileColumns WorkOrders { get; } = new(FileKind.WorkOrders, WorkOrderText.Columns, ["swap", "order_state"], []);

    /// <summary>The column of refused rows that says why they were refused; it is not read back.</summary>
    public const string WhyRefused = "why_refused";

    /// <summary>The columns of each kind.</summary>
    public static IReadOnlyList<FileColumns> Each { get; } = [Chains, Readings, Events, LinkMeasures, PartReadings, WorkOrders];

    /// <summary>The columns of a kind; null for none.</summary>
    public static FileColumns? Of(FileKind? kind) => Each.FirstOrDefault(c => c.Kind == kind);

    /// <summary>The columns that a header lacks, and why each is needed.</summary>
    public IEnumerable<(string Column, Phrase Reason)> MissingIn(IEnumerable<string> header)
    {
        var there = header.ToHashSet();
        foreach (var missing in Required.Where(c => !there.Contains(c))) yield return (missing, $"The column is missing.");
        if (OneOf.Count > 0 && !OneOf.Any(there.Contains))
            yield return (OneOf[0], $"The column is missing: one of {string.Join(", ", OneOf)} is needed.");
    }

    /// <summary>The kind that a header and a file name tell; null when neither tells.</summary>
    /// <remarks>The header goes first, since files are renamed. A name helps to say what a broken header lacks.</remarks>
    public static FileColumns? Tell(IReadOnlyCollection<string> header, string fileName)
    {
        if (header.Contains("order_state")) return WorkOrders;
        if (header.Contains("event")) return Events;
        if (header.Contains("length")) return Readings;
        if (header.Contains("one_link") || header.Contains("several_links") || header.Contains("d1")) return LinkMeasures;
        if (header.Contains("part")) return PartReadings;
        if (header.Contains("chain") && (header.Contains("pitch_mm") || header.Contains("chain_type"))) return Chains;
        return new[] { PartReadings, Readings, Events, Chains, LinkMeasures, WorkOrders }.FirstOrDefault(
            c => fileName.Replace("_", "", StringComparison.Ordinal).Contains(
                c.Kind.ToString(), StringComparison.OrdinalIgnoreCase));
    }
}
