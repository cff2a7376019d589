using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Lifting;

/// <summary>
/// A plant that has nothing but chains that lift: of every kind that can, one for each state that its wear can be in.
/// </summary>
/// <remarks>Found by asking the kinds, so that a new one is among them.</remarks>
internal static class LiftingChains
{
    /// <summary>How far each is worn, in percent of its limit; none has no reading.</summary>
    private static readonly (string State, double? OfLimit)[] States =
        [("unread", null), ("low", 0.1), ("near", 0.8), ("past", 1.3), ("found", 0.1), ("doubted", 0.1), ("stopped", 0.1)];

    /// <summary>Kinds of which every chain lifts, and the usual one as a hoist's.</summary>
    private static IEnumerable<ChainFamily> Families => ChainFamily.All.Where(f => f.LiftsByNature || f.IsUsual);

    /// <summary>The names of all.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. from family in Families from state in States select NameOf(family, state.State)];

    /// <summary>Those at which a crack is found.</summary>
    public static IEnumerable<string> Found => Families.Select(f => NameOf(f, "found"));

    /// <summary>Those that somebody takes out of use.</summary>
    public static IEnumerable<string> Stopped => Families.Select(f => NameOf(f, "stopped"));

    /// <summary>
    /// Says yes to what a file asks about, as a person does who stands at the chain: the newest length of those in doubt.
    /// </summary>
    public static async Task ConfirmAsync(ImportReport report, WearDb db, IntakeDesk desk)
    {
        Assert.All(report.Files.SelectMany(f => f.Remarks), r =>
            Assert.Equal((RemarkKind.Waiting, "length"), (r.Kind, r.Column)));
        await using (db)
        {
            foreach (var id in await db.Readings.Where(r => r.Standing == ReadingStanding.Waiting).Select(r =>
                r.Id).ToListAsync())
                Assert.IsType<IntakeAnswer.Taken>(await desk.ConfirmAsync(id, "Ina", isPlanner: true));
        }
    }

    /// <summary>The files that bring them in, with readings of the last half year.</summary>
    /// <param name="now">The plant's present.</param>
    public static IReadOnlyList<ImportFile> Files(DateTimeOffset now)
    {
        var cards = new StringBuilder("chain,line,position,family,pitch_mm,pitches,fitted_at,fitted_counter_h,lifts\n");
        var readings = new StringBuilder("chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c\n");
        var fitted = now.AddDays(-180);
        foreach (var family in Families)
        {
            var pitches = family.Span.IsFixed ? family.Span.Fewest : 24;
            foreach (var (state, ofLimit) in States)
            {
                var name = NameOf(family, state);
                Add(cards, $"{name},Store,mast,{family.Name},25.4,120,{Time(fitted)},0,true");
                for (var visit = 1; ofLimit is { } share && visit <= 4; visit++)
                {
                    var percent = family.GeneralLimit.Percent * share * visit / 4;
                    var (at, lengthMm) = (fitted.AddDays(44 * visit), pitches * 25.4 * (1 + percent / 100));
                    Add(readings, $"{name},{Time(at)},{visit * 500},tape,,{pitches},{lengthMm:0.00},mm,20");
                }

                // No chain is so long and runs: it is held back, and would take the chain out of use.
                if (state == "doubted")
                    Add(readings, $"{name},{Time(fitted.AddDays(178))},2020,tape,,{pitches},{pitches * 25.4 * 1.09:0.00},mm,20");
            }
        }

        return [File("chains.csv", cards), File("readings.csv", readings)];
    }

    private static string NameOf(ChainFamily family, string state) => $"{family.Name.Replace('_', '-')}-{state}";

    private static string Time(DateTimeOffset at) => at.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);

    private static void Add(StringBuilder text, FormattableString line) =>
        text.Append(FormattableString.Invariant(line)).Append('\n');

    private static ImportFile File(string name, StringBuilder text)
    {
        var bytes = Encoding.UTF8.GetBytes(text.ToString());
        return new(name, () => new MemoryStream(bytes)) { By = "Ina" };
    }
}
