using WearWatch.Dashboard.Api.Wire;
using WearWatch.Plant.Files;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api;

/// <summary>
/// A card on the wire and as text by column, so that a program's card is held to the rules of the file and of the form.
/// </summary>
internal static class CardWire
{
    /// <summary>The card as it is sent out.</summary>
    public static CardJson ToJson(ChainRow row) => new()
    {
        Line = row.Line,
        Position = row.Position,
        ChainType = row.ChainType,
        Family = row.Family.Name,
        PitchMm = row.PitchMm,
        Pitches = row.Pitches,
        SprocketTeeth = row.SprocketTeeth,
        FittedAt = row.FittedAt,
        FittedCounterH = row.FittedCounterH,
        Lot = row.Lot,
        LimitPct = row.LimitPct,
        LimitSetReason = row.LimitSetReason,
        Strands = row.Strands,
        FixedCentres = row.FixedCentres,
        RunsInParallel = row.RunsInParallel,
        Timing = row.Timing,
        Positioning = row.Positioning,
        HighPerformance = row.HighPerformance,
        Lifts = row.Lifts,
        CentreDistanceMm = row.CentreDistanceMm,
        TakeUpTravelMm = row.TakeUpTravelMm,
        LoadRel = row.LoadRel,
        SpeedMPerS = row.SpeedMS,
        Lubrication = row.Lubrication is { } oil ? Tokens.Of(oil) : null,
        Dust = row.Dust is { } dust ? Tokens.Of(dust) : null,
        AmbientC = row.AmbientC,
        OilMethod = row.OilMethod is { } method ? Tokens.Of(method) : null,
        OilGrade = row.OilGrade,
        OilingIntervalH = row.OilingIntervalH,
        OilingSurroundingsFactor = row.OilingSurroundingsFactor,
        Revision = row.Revision,
    };

    /// <summary>The card that was sent in, as text by column.</summary>
    public static Dictionary<string, string> ToTexts(string chain, CardJson card) => new()
    {
        ["chain"] = chain,
        ["line"] = card.Line ?? "",
        ["position"] = card.Position ?? "",
        ["chain_type"] = card.ChainType ?? "",
        ["family"] = card.Family ?? "",
        ["pitch_mm"] = RowFields.Text(card.PitchMm),
        ["pitches"] = RowFields.Text(card.Pitches),
        ["sprocket_teeth"] = string.Join(' ', card.SprocketTeeth ?? []),
        ["fitted_at"] = RowFields.Text(card.FittedAt),
        ["fitted_counter_h"] = RowFields.Text(card.FittedCounterH),
        ["lot"] = card.Lot ?? "",
        ["limit_pct"] = RowFields.Text(card.LimitPct),
        ["limit_set_reason"] = card.LimitSetReason ?? "",
        ["strands"] = RowFields.Text(card.Strands),
        ["fixed_centres"] = Flag(card.FixedCentres),
        ["runs_in_parallel"] = Flag(card.RunsInParallel),
        ["timing"] = Flag(card.Timing),
        ["positioning"] = Flag(card.Positioning),
        ["high_performance"] = Flag(card.HighPerformance),
        ["lifts"] = Flag(card.Lifts),
        ["centre_distance_mm"] = RowFields.Text(card.CentreDistanceMm),
        ["take_up_travel_mm"] = RowFields.Text(card.TakeUpTravelMm),
        ["load_rel"] = RowFields.Text(card.LoadRel),
        ["speed_m_s"] = RowFields.Text(card.SpeedMPerS),
        ["lubrication"] = card.Lubrication ?? "",
        ["dust"] = card.Dust ?? "",
        ["ambient_c"] = RowFields.Text(card.AmbientC),
        ["oil_method"] = card.OilMethod ?? "",
        ["oil_grade"] = card.OilGrade ?? "",
        ["oiling_interval_h"] = RowFields.Text(card.OilingIntervalH),
        ["oiling_surroundings_factor"] = RowFields.Text(card.OilingSurroundingsFactor),
    };

    private static string Flag(bool value) => value ? "yes" : "";
}
