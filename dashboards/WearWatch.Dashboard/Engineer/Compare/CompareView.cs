using WearWatch.Dashboard.Engineer.Costs;
using WearWatch.Dashboard.Engineer.LifeData;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Lives;
using WearWatch.Plant.Books;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Engineer.Compare;

/// <summary>What the page of comparisons shows.</summary>
public sealed record CompareView
{
    /// <summary>Confidence of every interval on the page.</summary>
    public const double Confidence = 0.90;

    public required CompareFilter Filter { get; init; }

    /// <summary>The groups that can be picked.</summary>
    public required IReadOnlyList<string> Groups { get; init; }

    /// <summary>Both sides' lives, for the picture.</summary>
    public required IReadOnlyList<GroupOfLives> Sides { get; init; }

    public required IReadOnlyList<CompareLine> Rows { get; init; }

    /// <summary>Whether both sides last equally long.</summary>
    public required LogRank LogRank { get; init; }

    /// <summary>
    /// What is compared where nothing was picked: the two groups with most lives, as all against all tells nothing.
    /// </summary>
    public static CompareFilter Opening(FleetLives fleet, CompareFilter filter)
    {
        if (filter.A != CompareSide.All || filter.B != CompareSide.All) return filter;
        string[] most =
        [
            .. fleet.Chains.SelectMany(chain => chain.Lives.Select(life => filter.By.Of(chain.CardOf(life)))).GroupBy(g => g)
                .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).Select(g => g.Key)
                .Where(g => g.Length > 0).Take(2),
        ];
        return most is [var a, var b]
            ? filter with { A = CompareSide.All with { Group = a }, B = CompareSide.All with { Group = b } }
            : filter;
    }

    public static CompareView Of(
        FleetLives fleet, IReadOnlyList<RecordedForecast> record, CostTerms terms, CompareFilter filter, PlantTime time)
    {
        var lives = fleet.Chains.SelectMany(chain => chain.Lives.Select(life => (Chain: chain, Life: life))).ToList();
        List<(BookedChain Chain, BookedLife Life)> Of(CompareSide side, CompareSide other) => lives.FindAll(l =>
            side.Holds(filter.By.Of(l.Chain.CardOf(l.Life)), other, l.Life.FittedAt is { } at ? time.DateOf(at) : null));
        var (a, b) = (Of(filter.A, filter.B), Of(filter.B, filter.A));
        GroupOfLives[] sides =
            [Group(T[filter.A.Said], a), Group(T[filter.B.Said] + (filter.A.Said.Equals(filter.B.Said) ? " " : ""), b)];
        return new CompareView
        {
            Filter = filter,
            Groups = [.. lives.Select(l => filter.By.Of(l.Chain.CardOf(l.Life))).Distinct().Order(StringComparer.Ordinal)],
            Sides = sides,
            Rows =
            [
                Rate(a, b), Life(sides[0], sides[1]), Cost(a, b, terms, time), Coverage(record, filter, time),
                FromWear(sides[0], sides[1]),
            ],
            LogRank = LogRank.Compare([.. sides.Select(s => s.Lives)]),
        };
    }

    private static GroupOfLives Group(string name, IEnumerable<(BookedChain Chain, BookedLife Life)> lives) =>
        GroupOfLives.Of(name, [.. lives.Where(l => l.Life.FittingKnown).Select(l => l.Life.Life)], LifeLaw.Weibull);

    private static CompareLine Rate(List<(BookedChain Chain, BookedLife Life)> a, List<(BookedChain Chain, BookedLife Life)> b)
    {
        static List<double> Rates(List<(BookedChain Chain, BookedLife Life)> side) =>
            [.. side.Select(l => l.Life.LogRate?.Mean).OfType<double>()];
        static Phrase Words(List<double> rates) => rates.Count == 0
            ? Phrase.Verbatim(Show.Nothing)
            : $"{Show.RateFigure(Math.Exp(rates.Average()))}, {EngineerWords.Lives(rates.Count)}";
        var (one, other) = (Rates(a), Rates(b));
        return new($"Wear rate, % per 1,000 h", Words(one), Words(other), Difference.RatioOfMeans(one, other, Confidence));
    }

    private static CompareLine Life(GroupOfLives a, GroupOfLives b)
    {
        static Phrase Words(GroupOfLives side) => side.Fit is { } fit
            ? Phrase.Of($"{fit.MedianHours:#,0} h, {EngineerWords.Lives(side.Lives.Count)}, {side.Failures:#,0} to the limit")
            : $"{Show.Nothing}, {EngineerWords.Lives(side.Lives.Count)}, {side.Failures:#,0} to the limit";
        Difference? difference = a.Fit is { } one && b.Fit is { } other && a.MedianInterval is { Low: > 0 } oneBand
            && b.MedianInterval is { Low: > 0 } otherBand
            ? Difference.Ratio((one.MedianHours, oneBand), (other.MedianHours, otherBand))
            : null;
        return new($"Median life (Weibull)", Words(a), Words(b), difference);
    }

    private static CompareLine FromWear(GroupOfLives a, GroupOfLives b)
    {
        static Phrase Words(GroupOfLives side) => side.FromWear is { } law
            ? Phrase.Of($"{law.Median(Confidence).Hours:#,0} h, {EngineerWords.Lives(law.Drawn)} by what their wear foretold")
            : Phrase.Verbatim(Show.Nothing);
        return new($"Median life from wear", Words(a), Words(b), a.FromWear is { } one && b.FromWear is { } other
            ? Difference.Ratio(one.Median(Confidence), other.Median(Confidence))
            : null);
    }

    private static CompareLine Cost(
        List<(BookedChain Chain, BookedLife Life)> a, List<(BookedChain Chain, BookedLife Life)> b, CostTerms terms,
        PlantTime time)
    {
        var ever = new CostPeriod(DateTimeOffset.MinValue, time.Now);
        List<(double Cost, double Hours)> ByChain(List<(BookedChain Chain, BookedLife Life)> side) =>
            [.. side.GroupBy(l => l.Chain.Id).Select(g =>
                CostStatement.Sum(g.Select(l => CostStatement.Of(l.Chain, l.Life, terms, ever))))
                .Select(s => (s.Total, s.Hours))];
        Phrase Words(List<(double Cost, double Hours)> side) => side.Sum(c => c.Hours) is > 0 and var hours
            ? Phrase.Of($"{CostWords.Money(1000 * side.Sum(c => c.Cost) / hours, terms)}, {EngineerWords.Chains(side.Count)}")
            : Phrase.Verbatim(Show.Nothing);
        var (one, other) = (ByChain(a), ByChain(b));
        return new($"Cost of 1,000 running hours", Words(one), Words(other), Difference.RatioOfRates(one, other, Confidence));
    }

    private static CompareLine Coverage(IReadOnlyList<RecordedForecast> record, CompareFilter filter, PlantTime time)
    {
        ObservedShare Held(CompareSide side, CompareSide other) => ObservedShare.In(
            [.. record.Where(f => f.AtShare == 0.5 && f.Score.Answered
                && side.Holds(filter.By.Of(f.Card), other, f.FittedAt is { } at ? time.DateOf(at) : null))], f => f.Score.Held90);

        static Phrase Words(ObservedShare held) =>
            held.Of == 0 ? Phrase.Verbatim(Show.Nothing) : $"{100 * held.Fraction:0.0} % of {held.Of:#,0}";
        var (one, other) = (Held(filter.A, filter.B), Held(filter.B, filter.A));
        return new($"90 % intervals that held, at half of life", Words(one), Words(other),
            Difference.OfShares(one, other, Confidence), IsShare: true);
    }
}
