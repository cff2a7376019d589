using System.Globalization;
using WearWatch.SensorSim.Histories;
using WearWatch.SensorSim.Plant;

namespace WearWatch.SensorSim.Files;

/// <summary>Writes <c>chains.csv</c>: what runs where.</summary>
internal static class ChainsFile
{
    /// <summary>Writes the file.</summary>
    public static void Write(TextWriter writer, IEnumerable<PositionHistory> histories)
    {
        CsvText.Write(
            writer, "chain", "line", "position", "chain_type", "pitch_mm", "pitches", "fitted_at", "fitted_counter_h",
            "limit_pct", "load_rel", "speed_m_s", "lubrication", "dust", "family", "oiling_interval_h", "lot",
            "not_lifting_reason");
        foreach (var history in histories) Write(writer, history);
    }

    private static void Write(TextWriter writer, PositionHistory history)
    {
        var (position, first) = (history.Position, history.FirstChain);
        var isFittingKnown = !history.Fate.IsFittingUnrecorded;
        CsvText.Write(
            writer,
            position.ChainName,
            history.Line.Name,
            position.Label,
            position.Size.Designation,
            CsvText.Number(position.Size.PitchMm, 4),
            position.Pitches.ToString(CultureInfo.InvariantCulture),
            CsvText.Moment(isFittingKnown ? history.Span.Running.MomentAt(first.FittedAtHour) : null),
            CsvText.Number(isFittingKnown ? history.Meter.CountAt(first.FittedAtHour) : null, 1),
            CsvText.Number(position.ToldLimitPercent, 2),
            CsvText.Number(history.Fate.IsLoadUnknown ? null : position.Duty.LoadRel, 2),
            CsvText.Number(position.Duty.SpeedMetresPerSecond, 2),
            Name(position.Duty.Lubrication),
            Name(position.Duty.Dust),
            FamilyWord(position.Size.Family),
            CsvText.Number(position.OilingIntervalHours, 0),
            isFittingKnown ? first.Lot : "",
            position.Size.Family == MillFamily.RoundLink ? "a drag conveyor: it holds nothing up" : "");
    }

    /// <summary>The file format's word.</summary>
    private static string FamilyWord(MillFamily family) => family switch
    {
        MillFamily.DoublePitch => "double_pitch",
        MillFamily.WeldedSteel => "welded_steel",
        MillFamily.RoundLink => "round_link",
        _ => Name(family),
    };

    private static string Name<T>(T value) where T : struct, Enum => value.ToString().ToLowerInvariant();
}
