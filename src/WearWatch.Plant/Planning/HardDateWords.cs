using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Planning;

/// <summary>The hard date of a chain that holds a load, in words.</summary>
public static class HardDateWords
{
    /// <summary>Why a swap cannot stand in a shutdown after the date, and what to do.</summary>
    public static Phrase TooLate(string chain, DateTimeOffset by, PlantTime time) =>
        $"{chain} holds a load: {OutOfUse(by, time)}. This shutdown begins later. Choose an earlier one, or take the "
        + $"chain out of use by that day.";

    /// <summary>From when it must not be used.</summary>
    public static Phrase OutOfUse(DateTimeOffset from, PlantTime time) => from <= time.Now
        ? Phrase.Of($"out of use now, since {time.DateOf(from)}")
        : Phrase.Of($"out of use from {time.DateOf(from)}");
}
