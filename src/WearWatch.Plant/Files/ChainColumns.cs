using ChainColumn = WearWatch.Plant.Files.FileColumn<WearWatch.Chains.ChainCard>;

namespace WearWatch.Plant.Files;

/// <summary>
/// The columns of chains.csv after the chain's name. Those of the agreed format come first; the others may be left out.
/// </summary>
public static class ChainColumns
{
    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<ChainColumn> All { get; } =
    [
        ChainColumn.Text("line", c => c.Line, (c, v) => c with { Line = v }),
        ChainColumn.Text("position", c => c.Position, (c, v) => c with { Position = v }),
        ChainColumn.Text("chain_type", c => c.ChainType, (c, v) => c with { ChainType = v }),
        ChainColumn.Number("pitch_mm", 0.001, 2000, c => c.PitchMm, (c, v) => v is { } mm ? c with { PitchMm = mm } : c),
        ChainColumn.Whole("pitches", 1, 1_000_000, c => c.Pitches, (c, v) => c with { Pitches = v }),
        ChainColumn.Moment("fitted_at", c => c.FittedAt, (c, v) => c with { FittedAt = v }),
        ChainColumn.Number("fitted_counter_h", 0, RowFields.MostCounterH, c => c.FittedCounter?.Hours,
            (c, v) => c with { FittedCounter = RowFields.Hours(v) }),
        ChainColumn.Number("limit_pct", 0.01, 9.99, c => c.LimitPercent, (c, v) => c with { LimitPercent = v }),
        ChainColumn.Number(
            "load_rel", 0.001, 20, c => c.Duty.RelativeLoad, (c, v) => c with { Duty = c.Duty with { RelativeLoad = v } }),
        ChainColumn.Number("speed_m_s", 0.0001, 100, c => c.Duty.SpeedMetresPerSecond,
            (c, v) => c with { Duty = c.Duty with { SpeedMetresPerSecond = v } }),
        ChainColumn.Word("lubrication", FileWords.Lubrication, c => c.Duty.Lubrication,
            (c, v) => c with { Duty = c.Duty with { Lubrication = v } }),
        ChainColumn.Word("dust", FileWords.Dust, c => c.Duty.Dust, (c, v) => c with { Duty = c.Duty with { Dust = v } }),

        new("family", ColumnKind.Text, c => c.Family.IsUsual
            ? null
            : c.Family.Name, (row, c) => c with { Family = row.Family("family") })
        {
            Always = false,
        },
        new("sprocket_teeth", ColumnKind.Text, c => string.Join(' ', c.SprocketTeeth),
            (row, c) => c with { SprocketTeeth = row.Teeth("sprocket_teeth") }) { Always = false },
        ChainColumn.Text("lot", c => c.Lot, (c, v) => c with { Lot = v }, always: false),
        ChainColumn.Text("limit_set_reason", c => c.LimitSetReason, (c, v) => c with { LimitSetReason = v }, always: false),
        ChainColumn.Whole("strands", 1, 24, c => c.Strands == 1
            ? null
            : c.Strands, (c, v) => c with { Strands = v ?? 1 }, always: false),
        ChainColumn.Flag("fixed_centres", c => c.FixedCentres, (c, v) => c with { FixedCentres = v }),
        ChainColumn.Flag("runs_in_parallel", c => c.RunsInParallel, (c, v) => c with { RunsInParallel = v }),
        ChainColumn.Flag("timing", c => c.Timing, (c, v) => c with { Timing = v }),
        ChainColumn.Flag("positioning", c => c.Positioning, (c, v) => c with { Positioning = v }),
        ChainColumn.Flag("high_performance", c => c.HighPerformance, (c, v) => c with { HighPerformance = v }),
        ChainColumn.Flag("lifts", c => c.Lifts, (c, v) => c with { Lifts = v }),
        ChainColumn.Number(
            "centre_distance_mm", 0.001, 1e7, c => c.CentreDistanceMm, (c, v) => c with { CentreDistanceMm = v }, always: false),
        ChainColumn.Number(
            "take_up_travel_mm", 0, 1e5, c => c.TakeUpTravelMm, (c, v) => c with { TakeUpTravelMm = v }, always: false),
        ChainColumn.Number(
            "ambient_c", -60, 400, c => c.Duty.AmbientC, (c, v) => c with { Duty = c.Duty with { AmbientC = v } }, always: false),
        ChainColumn.Word("oil_method", FileWords.OilMethods, c => c.OilMethod, (c, v) => c with { OilMethod = v }, always: false),
        ChainColumn.Text("oil_grade", c => c.OilGrade, (c, v) => c with { OilGrade = v }, always: false),
        ChainColumn.Number("oiling_interval_h", 0.001, 100_000, c => c.OilingIntervalHours,
            (c, v) => c with { OilingIntervalHours = v }, always: false),
        ChainColumn.Number("oiling_surroundings_factor", 0.05, 20, c => c.OilingSurroundingsFactor is 1
            ? null
            : c.OilingSurroundingsFactor,
            (c, v) => c with { OilingSurroundingsFactor = v ?? 1 }, always: false),
    ];
}
