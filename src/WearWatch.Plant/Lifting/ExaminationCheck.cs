using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Lifting;

/// <summary>What a report must say before it is kept.</summary>
internal static class ExaminationCheck
{
    private const int LongestText = 2000;
    private const int LongestName = 200;

    /// <summary>What is wrong with it; empty when it can be kept.</summary>
    public static IEnumerable<Refusal> Faults(NewExamination report, ChainCard card, DateOnly today)
    {
        if (report.On > today) yield return new("on", $"The day lies in the future.");
        if (report.Examiner.Trim().Length is 0 or > LongestName) yield return new("examiner", $"Say who examined it.");
        if (report.Remarks.Length > LongestText) yield return new("remarks", $"Longer than {LongestText} characters.");
        if (report.ExaminerAddress.Length > LongestName || report.ReportNumber.Length > LongestName)
            yield return new("report_number", $"Longer than {LongestName} characters.");
        if (report.Points.Any(p => p.Measured.Length > LongestName || p.Note.Length > LongestName))
            yield return new("points", $"A value or a note is longer than {LongestName} characters.");
        if (report.CounterH is { } h && h is not (>= 0 and <= RowFields.MostCounterH))
            yield return new("counter_h", $"An hour counter shows 0 to 10,000,000.");
        if (report.NextOn <= report.On) yield return new("next_on", $"The next one comes after this one.");
        if (report.Points.DistinctBy(p => p.Point).Count() < report.Points.Count)
            yield return new("points", $"A point stands there twice.");
        if (report.Points.FirstOrDefault(p => card.Family.CheckPoint(p.Point, card.HoldsLoad) is null) is { } strange)
            yield return new("points", $"{strange.Point} is not examined on this kind of chain.");
        foreach (var fault in ResultFaults(report, card)) yield return fault;
    }

    /// <summary>What the report says must agree with its points: not examined is not the same as nothing found.</summary>
    private static IEnumerable<Refusal> ResultFaults(NewExamination report, ChainCard card)
    {
        var points = card.Family.CheckPoints(card.HoldsLoad);
        var stops = points.Where(p => p.StopsTheChain && Outcome(report, p) == PointOutcome.Found).ToList();
        if (stops.Count > 0 && report.Result != ExaminationResult.OutOfUse)
            yield return new("result", $"{stops[0].Ask}: that takes it out of use.");
        var left = points.Count(p => Outcome(report, p) == PointOutcome.NotExamined);
        if (left > 0 && report.Result is ExaminationResult.NothingFound or ExaminationResult.RemedyByDate)
            yield return new("result", $"{left} of {points.Count} points were not examined: then the report is incomplete.");
        var found = report.Points.Any(p => p.Outcome == PointOutcome.Found);
        if (found && report.Result == ExaminationResult.NothingFound)
            yield return new("result", $"Something was found at a point.");
        if (report.Result == ExaminationResult.RemedyByDate != report.RemedyBy is not null || report.RemedyBy < report.On)
            yield return new("remedy_by", $"Say by when it is to be put right, for that result and no other.");
        if (report.Result is ExaminationResult.OutOfUse or ExaminationResult.RemedyByDate && !found
            && report.Remarks.Trim().Length == 0)
            yield return new("remarks", $"Say what was found.");
    }

    private static PointOutcome Outcome(NewExamination report, CheckPoint point) =>
        report.Points.FirstOrDefault(p => p.Point == point.Point)?.Outcome ?? PointOutcome.NotExamined;
}
