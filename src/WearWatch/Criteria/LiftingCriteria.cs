using System.Globalization;
using System.Reflection;

namespace WearWatch.Criteria;

/// <summary>The criteria for chains that lift or hold a load that WearWatch knows (criteria.csv), each with its source.</summary>
/// <remarks>Guidance: local law, the machine's manual and the competent person decide; of several the strictest holds.</remarks>
public static class LiftingCriteria
{
    private const string Table = "criteria.csv";

    /// <summary>All of them, family by family.</summary>
    public static IReadOnlyList<LiftingCriterion> All { get; } = [.. Read()];

    private static readonly Dictionary<string, LiftingCriterion> ById =
        All.ToDictionary(criterion => criterion.Id, StringComparer.Ordinal);

    /// <summary>The criterion of a name.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    public static LiftingCriterion Of(string id) => ById[id];

    /// <summary>The figure of a criterion.</summary>
    /// <exception cref="InvalidOperationException">It has none.</exception>
    public static double ValueOf(string id) =>
        Of(id).Value ?? throw new InvalidOperationException($"The criterion {id} has no figure.");

    /// <summary>The criteria of a family and those for all of them.</summary>
    public static IReadOnlyList<LiftingCriterion> For(CriterionFamily family) =>
        [.. All.Where(criterion => criterion.Family == family || criterion.Family == CriterionFamily.Any)];

    private static IEnumerable<LiftingCriterion> Read()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Table)
            ?? throw new InvalidOperationException($"The table {Table} is not in the assembly.");
        using var reader = new StreamReader(stream);
        var isHead = true;
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith('#')) continue;
            if (!isHead) yield return Of(line.Split(';'));
            isHead = false;
        }
    }

    private static LiftingCriterion Of(string[] cells) => new()
    {
        Id = cells[0],
        Family = Word<CriterionFamily>(cells[1]),
        Part = CriterionText.Read(cells[2]),
        Words = CriterionText.Read(cells[3]),
        Value = cells[4].Length > 0 ? double.Parse(cells[4], CultureInfo.InvariantCulture) : null,
        Unit = CriterionText.Read(cells[5]),
        Action = Word<CriterionAction>(cells[6]),
        Regions = cells[7].Split(' '),
        Source =
        [
            .. cells[8].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => int.Parse(n, CultureInfo.InvariantCulture)),
        ],
        Certainty = Word<CriterionCertainty>(cells[9]),
    };

    private static T Word<T>(string word)
        where T : struct, Enum => Enum.Parse<T>(word.Replace("_", "", StringComparison.Ordinal), ignoreCase: true);
}
