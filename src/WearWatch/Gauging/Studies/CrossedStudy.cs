namespace WearWatch.Gauging.Studies;

/// <summary>A study in which every person measured every section equally often.</summary>
public sealed class CrossedStudy
{
    private readonly double[][][] values;

    private CrossedStudy(IReadOnlyList<string> sections, IReadOnlyList<string> people, double[][][] values)
    {
        Sections = sections;
        People = people;
        this.values = values;
        Trials = values[0][0].Length;
    }

    /// <summary>The sections.</summary>
    public IReadOnlyList<string> Sections { get; }

    /// <summary>The people, or the tools.</summary>
    public IReadOnlyList<string> People { get; }

    /// <summary>How often everybody measured every section.</summary>
    public int Trials { get; }

    /// <summary>Number of readings.</summary>
    public int Count => Sections.Count * People.Count * Trials;

    /// <summary>The readings of a person on a section.</summary>
    /// <param name="section">Index of the section.</param>
    /// <param name="person">Index of the person.</param>
    public IReadOnlyList<double> At(int section, int person) => values[section][person];

    /// <summary>Puts readings in order, or says what is missing.</summary>
    public static StudyOutcome Of(IEnumerable<StudyReading> readings)
    {
        var all = readings.ToList();
        string[] sections = [.. all.Select(r => r.Section).Distinct()];
        string[] people = [.. all.Select(r => r.Person).Distinct()];
        if (sections.Length < 2)
            return new StudyOutcome.Refused($"Measure at least two sections, better ten that differ as worn chains do.");
        if (people.Length < 2) return new StudyOutcome.Refused($"At least two people (or tools) must measure.");
        if (all.Exists(r => !double.IsFinite(r.Value))) return new StudyOutcome.Refused($"Every reading must be a number.");

        var cells = all.ToLookup(r => (r.Section, r.Person), r => r.Value);
        double[][][] values = [.. sections.Select(s => people.Select(p => cells[(s, p)].ToArray()).ToArray())];
        var trials = values[0][0].Length;
        for (var s = 0; s < sections.Length; s++)
        {
            for (var p = 0; p < people.Length; p++)
            {
                if (values[s][p].Length != trials)
                {
                    return new StudyOutcome.Refused(
                        $"{people[p]} measured {sections[s]} {values[s][p].Length} times, {people[0]} measured {sections[0]} "
                        + $"{trials} times: everybody must measure every section equally often.");
                }
            }
        }

        return trials < 2
            ? new StudyOutcome.Refused($"Everybody must measure every section at least twice.")
            : new StudyOutcome.Balanced(new CrossedStudy(sections, people, values));
    }
}
