namespace WearWatch.Signals.Passes;

/// <summary>Series of links from passes, by number.</summary>
internal static class SpeedFree
{
    /// <summary>The logarithm of the interval behind each roller; NaN where it is not known. It holds the speed.</summary>
    public static double[] Intervals(PassTrain train)
    {
        var intervals = Unknown(train);
        for (var i = 0; i + 1 < train.Numbers.Count; i++)
            if (train.IsNext(i)) intervals[train.Numbers[i]] = Math.Log(train.TimesUs[i + 1] - train.TimesUs[i]);
        return intervals;
    }

    /// <summary>
    /// By how much more than one link passed the first sensor while each link passed the second; NaN where it is not known. The
    /// speed drops out, since both are of one time.
    /// </summary>
    /// <returns>The excess by the second sensor's numbers, and where the first sensor was then, in its numbers.</returns>
    public static (double[] Excess, double[] Places) Excess(PassTrain first, PassTrain second)
    {
        var (excess, places) = (Unknown(second), Unknown(second));
        var i = 0;
        for (var j = 0; j < second.TimesUs.Count; j++)
        {
            while (i + 1 < first.TimesUs.Count && first.TimesUs[i + 1] <= second.TimesUs[j]) i++;
            if (PlaceAt(first, i, second.TimesUs[j]) is { } place) places[second.Numbers[j]] = place;
        }

        for (var j = 0; j + 1 < excess.Length; j++) excess[j] = places[j + 1] - places[j] - 1;
        return (excess, places);
    }

    /// <summary>
    /// Where the chain stands at the first sensor at a time, in its numbers: by the cubic through four passes, so that a speed
    /// that changes within a pitch leaves nothing (Neville's scheme). Null where they are not four links in a row.
    /// </summary>
    private static double? PlaceAt(PassTrain train, int i, double timeUs)
    {
        if (i < 1 || i + 2 >= train.Numbers.Count || train.Numbers[i + 2] - train.Numbers[i - 1] != 3) return null;
        Span<double> values = [-1, 0, 1, 2];
        for (var width = 1; width < 4; width++)
        {
            for (var k = 0; k + width < 4; k++)
            {
                var (from, to) = (train.TimesUs[i - 1 + k], train.TimesUs[i - 1 + k + width]);
                values[k] += (values[k + 1] - values[k]) * (timeUs - from) / (to - from);
            }
        }

        return train.Numbers[i] + values[0];
    }

    private static double[] Unknown(PassTrain train)
    {
        var values = new double[train.Numbers.Count == 0 ? 0 : train.Numbers[^1] + 1];
        Array.Fill(values, double.NaN);
        return values;
    }
}
