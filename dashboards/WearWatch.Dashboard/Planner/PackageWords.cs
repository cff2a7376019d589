using System.Globalization;
using WearWatch.Chains;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Windows;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Planner;

/// <summary>The work package of a stop in words, the same on the page, on paper and in the sheet.</summary>
public static class PackageWords
{
    /// <summary>The address of the package of a stop.</summary>
    public static string Address(string windowId, string kind = "") => $"/plan/stop{kind}?id={Uri.EscapeDataString(windowId)}";

    /// <summary>When the stop is and who works in it.</summary>
    public static Phrase Stop(ShutdownWindow window, PlantTime time) => window.Crew.Length > 0
        ? Phrase.Of($"{time.Moment(window.Start)} to {time.Moment(window.End)}, crew {window.Crew}")
        : $"{time.Moment(window.Start)} to {time.Moment(window.End)}";

    /// <summary>Hours with a digit where they need one.</summary>
    public static string Hours(double hours) => hours.ToString("0.#", CultureInfo.CurrentCulture);

    /// <summary>The time of day at which a swap begins; with the day where the stop lasts longer than one.</summary>
    public static string Start(WorkPackage package, PackageStep step)
    {
        var at = package.StartOf(step);
        return package.Window.Length.TotalHours > 24
            ? at.ToString("d MMM HH:mm", CultureInfo.CurrentCulture)
            : at.ToString("HH:mm", CultureInfo.CurrentCulture);
    }

    /// <summary>Who does a swap: <c>fitters 1, 2</c>.</summary>
    public static Phrase Who(PackageStep step) => step.Turn.Fitters is [var one]
        ? Phrase.Of($"fitter {one}")
        : $"fitters {string.Join(", ", step.Turn.Fitters)}";

    /// <summary>How the new chain is made up, or that it comes whole.</summary>
    public static Phrase Cut(SwapJob job) => job.Face.Row.HoldsLoad
        ? Phrase.Of($"whole, with its certificate")
        : $"{job.Cut.CutPitches} pitches, {job.Cut.ConnectingLinks} connecting links, {job.Cut.OffsetLinks} offset links";

    /// <summary>The kit that is laid out for a chain: <c>FP-04: K1 every 4th pitch, no. 4711</c>; empty where none is.</summary>
    public static string Kit(string chain, SpareKit kit) => kit == SpareKit.None ? "" : chain + ": " + string.Join(", ",
        new[] { kit.Attachments, kit.StoreNumber, kit.SprocketNumber }.Where(t => t.Length > 0)
            .Select(t => t == kit.Attachments ? t : T[$"no. {t}"]));

    /// <summary>Whether a part will be there.</summary>
    public static Phrase Picked(PickLine pick) => pick.Missing switch
    {
        null => $"no record in the store",
        0 => $"there",
        var missing => $"{missing} missing",
    };

    /// <summary>A part with its quantity.</summary>
    public static Phrase Quantity(int quantity, Part part) => part.Kind == PartKind.Chain
        ? Phrase.Of($"{quantity} pitches")
        : Phrase.Counted(quantity, $"{quantity} piece", $"{quantity} pieces");

    /// <summary>Whether the work fits the stop.</summary>
    public static Phrase Fits(WorkPackage package) => package.HoursOver > 0
        ? $"The work lasts {Hours(package.HoursOver)} h longer than the stop. Move a swap, or take more fitters."
        : Phrase.Of($"The last swap ends {Hours(package.Window.Length.TotalHours - package.LastEndH)} h before the stop does.");
}
