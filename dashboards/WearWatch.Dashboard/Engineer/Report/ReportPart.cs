using WearWatch.Dashboard.Kit.Charts;

namespace WearWatch.Dashboard.Engineer.Report;

/// <summary>A part of the monthly report, for the page and for paper alike.</summary>
/// <param name="Heading">What it is about.</param>
/// <param name="Sentences">What is to be said.</param>
/// <param name="Table">The figures behind it; null for none.</param>
/// <param name="Picture">What is seen at once; null for none.</param>
public sealed record ReportPart(
    string Heading, IReadOnlyList<string> Sentences, ReportTable? Table = null, Drawing? Picture = null);

/// <summary>A small table.</summary>
/// <param name="Head">
/// Its columns; the first names the row, the others are figures unless <paramref name="Words"/> says so.
/// </param>
/// <param name="Rows">Its rows.</param>
/// <param name="Words">Whether all columns are words.</param>
public sealed record ReportTable(IReadOnlyList<string> Head, IReadOnlyList<IReadOnlyList<string>> Rows, bool Words = false);
