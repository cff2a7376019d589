using WearWatch.Planning.Windows;

namespace WearWatch.Dashboard.Planner;

/// <summary>A shutdown as it is typed.</summary>
public sealed class ShutdownForm
{
    /// <summary>A recurrence rule as RFC 5545 writes it: the first Saturday of each month.</summary>
    public const string RuleExample = "FREQ=MONTHLY;BYDAY=1SA";

    /// <summary>The line, or empty for every line.</summary>
    public string Line { get; set; } = "";

    public DateOnly Day { get; set; }

    public TimeOnly Start { get; set; } = new(6, 0);

    public double Hours { get; set; } = 8;

    /// <summary>A recurrence rule, or <c>own</c> for the one typed.</summary>
    public string Recurs { get; set; } = "FREQ=WEEKLY";

    public string OwnRule { get; set; } = "";

    public string Crew { get; set; } = T["fitters"];

    public int People { get; set; } = 2;

    /// <summary>The shutdowns it describes, or what is wrong with it.</summary>
    public (IReadOnlyList<WindowRule> Rules, string? Fault) Read(IReadOnlyList<string> lines)
    {
        var rule = Recurs == "own" ? OwnRule.Trim() : Recurs;
        if (Hours is not (> 0 and <= 1440)) return ([], T[$"A shutdown lasts more than 0 and at most {1440:#,0} hours."]);
        if (People is < 0 or > 500) return ([], T["People: 0 to 500."]);
        if (!WindowRule.IsRecurrence(rule))
            return ([], T[$"'{rule}' is no recurrence rule. An example: {RuleExample}"]);
        string[] asked = Line.Length > 0 ? [Line] : [.. lines];
        if (asked.Length == 0) return ([], T["There is no line yet: enter or import chains first."]);
        return ([.. asked.Select(line => new WindowRule
        {
            Id = FormattableString.Invariant($"{line} {Day:yyyyMMdd}T{Start:HHmm}"),
            Line = line,
            FirstStart = Day.ToDateTime(Start),
            Length = TimeSpan.FromHours(Hours),
            Recurrence = rule,
            Crew = Crew.Trim(),
            CrewHours = People * Hours,
        })], null);
    }
}
