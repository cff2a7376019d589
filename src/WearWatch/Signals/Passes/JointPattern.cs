namespace WearWatch.Signals.Passes;

/// <summary>
/// Counts the whole pitches between the sensors by the pattern of the joints: no two links of a chain are quite alike.
/// </summary>
/// <remarks>
/// The interval between two passes at the second sensor is compared with that of the links which passed the first sensor l passes
/// before, for each count l that can be. The correlation summed over a day is high for the true count alone. Intervals are taken
/// relative to the mean of those of the same kind around, every second one: that removes the speed, and that outer links are
/// longer than inner ones, which would make every second count as likely. What single joints have worn is left.
/// </remarks>
public sealed class JointPattern
{
    private const int Around = 6;
    private const int FewestAlike = 4;

    /// <summary>The least correlation of a count that is believed, in standard deviations from none.</summary>
    /// <remarks>Set on simulated trains: docs/signals.md.</remarks>
    private const double Clear = 5;

    /// <summary>
    /// By how many standard deviations the correlation of a count that is believed lies at least above that of any other.
    /// </summary>
    private const double AboveOthers = 3;

    private readonly int fewest;
    private readonly double[] products;
    private readonly double[] firstSquares;
    private readonly double[] secondSquares;
    private readonly int[] pairs;

    /// <summary>Begins to count.</summary>
    /// <param name="pair">The sensors: a chain is between 2 % shorter than nominal and 10 % longer.</param>
    public JointPattern(SensorPair pair)
    {
        fewest = Math.Max(1, (int)Math.Floor(pair.NominalPitches / Gauging.Gauge.LongestShare) - 1);
        var counts = (int)Math.Ceiling(pair.NominalPitches / Gauging.Gauge.ShortestShare) + 1 - fewest + 1;
        (products, firstSquares, secondSquares, pairs) =
            (new double[counts], new double[counts], new double[counts], new int[counts]);
    }

    /// <summary>Adds a burst.</summary>
    /// <param name="first">Passes at the first sensor.</param>
    /// <param name="second">Passes at the second sensor.</param>
    /// <param name="fraction">
    /// The day's part of a pitch: the count is that of the whole pitches that go with it, also where a burst's own
    /// phase has come over a whole number.
    /// </param>
    public void Add(PassTrain first, PassTrain second, double fraction)
    {
        var (before, behind) = (Intervals(first), Intervals(second));
        foreach (var (j, place) in BurstPhase.Places(first, second))
        {
            if (behind.GetValueOrDefault(second.Numbers[j]) is not { } y) continue;
            var number = (int)Math.Round(place - fraction);
            for (var k = 0; k < products.Length; k++)
            {
                if (before.GetValueOrDefault(number - fewest - k) is not { } x) continue;
                products[k] += x * y;
                firstSquares[k] += x * x;
                secondSquares[k] += y * y;
                pairs[k]++;
            }
        }
    }

    /// <summary>The whole pitches between the sensors; null when the pattern does not tell.</summary>
    public int? Count()
    {
        var (best, second, at) = (double.MinValue, double.MinValue, 0);
        for (var k = 0; k < products.Length; k++)
        {
            var score = pairs[k] == 0 ? 0 : products[k] / Math.Sqrt(firstSquares[k] * secondSquares[k] / pairs[k]);
            if (score > best) (best, second, at) = (score, best, k);
            else if (score > second) second = score;
        }

        return best >= Clear && best - second >= AboveOthers ? fewest + at : null;
    }

    /// <summary>The interval behind each roller against the mean of its like around, less one.</summary>
    private static Dictionary<int, double?> Intervals(PassTrain train)
    {
        var raw = new double[train.Numbers.Count];
        for (var i = 0; i < raw.Length; i++) raw[i] = train.IsNext(i) ? train.TimesUs[i + 1] - train.TimesUs[i] : double.NaN;
        var relative = new Dictionary<int, double?>(raw.Length);
        for (var i = Around; i + Around < raw.Length; i++)
        {
            if (double.IsNaN(raw[i]) || train.Numbers[i + Around] - train.Numbers[i - Around] > 2 * Around + 2) continue;
            var (sum, count) = (0.0, 0);
            for (var k = i - Around; k <= i + Around; k++)
            {
                if (k == i || double.IsNaN(raw[k]) || int.IsOddInteger(train.Numbers[k] - train.Numbers[i])) continue;
                sum += raw[k];
                count++;
            }

            if (count >= FewestAlike) relative[train.Numbers[i]] = raw[i] * count / sum - 1;
        }

        return relative;
    }
}
