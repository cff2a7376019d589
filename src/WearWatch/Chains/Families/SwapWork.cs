namespace WearWatch.Chains.Families;

/// <summary>How long a swap takes and how many people it needs, by the chain's family and length.</summary>
/// <remarks>The defaults are assumptions to start with (<c>common practice</c>); a plant sets its own.</remarks>
/// <param name="Hours">Hours for the first pitches: guards off, old chain off, new one on, tension, guards on.</param>
/// <param name="HoursPer100Pitches">Hours more for each 100 pitches.</param>
/// <param name="People">People it needs at once.</param>
public sealed record SwapWork(double Hours, double HoursPer100Pitches, int People)
{
    /// <summary>Whether a plant can have meant it: some work, by 1 to 20 people, in at most 1,000 h.</summary>
    public bool IsPossible => Hours is >= 0 and <= 1000 && HoursPer100Pitches is >= 0 and <= 1000
        && Hours + HoursPer100Pitches > 0 && People is >= 1 and <= 20;

    /// <summary>Hours for a chain of so many pitches.</summary>
    public double HoursFor(int pitches) => Hours + HoursPer100Pitches * pitches / 100;
}
