namespace WearWatch.Signals.Passes;

/// <summary>A wave in a series of links.</summary>
internal static class SpeedWave
{
    /// <summary>Takes a wave of a frequency, in radians a link, away by least squares.</summary>
    /// <param name="values">The series.</param>
    /// <param name="edge">Values at either end that do not count.</param>
    /// <param name="frequency">The frequency; above 0 and below pi.</param>
    public static void TakeAway(double[] values, int edge, double frequency)
    {
        var (cc, ss, cs, cv, sv) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = edge; i < values.Length - edge; i++)
        {
            var (sine, cosine) = Math.SinCos(frequency * i);
            cc += cosine * cosine;
            ss += sine * sine;
            cs += cosine * sine;
            cv += cosine * values[i];
            sv += sine * values[i];
        }

        var determinant = cc * ss - cs * cs;
        if (determinant < 1e-6 * cc * ss) return; // too short to tell such a wave
        var (a, b) = ((ss * cv - cs * sv) / determinant, (cc * sv - cs * cv) / determinant);
        for (var i = edge; i < values.Length - edge; i++)
        {
            var (sine, cosine) = Math.SinCos(frequency * i);
            values[i] -= a * cosine + b * sine;
        }
    }
}
