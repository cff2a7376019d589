namespace WearWatch.Wear;

/// <summary>One account of a chain's readings: which were misread, when the rate jumped, and what follows of it.</summary>
/// <param name="LogWeight">ln of its probability among the accounts kept.</param>
/// <param name="Belief">What it believes.</param>
/// <param name="Hours">
/// Running hours since fitting for which it believes that: the last reading that it did not call an error.
/// </param>
/// <param name="JumpReading">Number, from 0, of the reading before which it last saw the rate jump; -1 when it never did.</param>
/// <param name="JumpWasUp">Whether that jump went up.</param>
/// <param name="LastMisread">Whether it calls the last reading an error.</param>
public readonly record struct Hypothesis(
    double LogWeight, Belief Belief, double Hours, int JumpReading, bool JumpWasUp, bool LastMisread)
{
    /// <summary>Which of the newest readings it calls errors; see <see cref="Hindsight"/>.</summary>
    public ulong Doubts { get; init; }

    /// <summary>The account of a chain without readings, at the hours for which its prior holds.</summary>
    public static Hypothesis At(double hours, Belief belief) => new(0, belief, hours, -1, false, false);

    /// <summary>Its belief at a later time, brought forward if it called the last reading an error.</summary>
    public Belief BeliefAt(double hours, WearConstants constants) => WearStep.Forward(Belief, (hours - Hours) / 1000, constants);
}
