using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>The register.</summary>
internal static class ChainTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => new HistoryShape<ChainRow>()
        .Whole("id", OfChain.IdMeaning, c => c.Id)
        .Text("chain", OfChain.ChainMeaning, c => c.Name)
        .Text("line", "production line", c => c.Line)
        .Text("position", "where on the line", c => c.Position)
        .Text("chain_type", "designation", c => c.ChainType)
        .Text("family", "kind of chain", c => c.Family.Name)
        .Number("pitch_mm", "nominal pitch", c => c.PitchMm)
        .Whole("pitches", "length in pitches", c => c.Pitches)
        .Whole("strands", "how many strands it has", c => c.Strands)
        .Text("sprocket_teeth", "teeth of its sprockets, with spaces between", c => string.Join(' ', c.SprocketTeeth))
        .Moment("fitted_at", "first recorded fitting", c => c.FittedAt)
        .Number("fitted_counter_h", "hour counter then", c => c.FittedCounterH)
        .Text("lot", "supplier's lot of the first recorded chain", c => c.Lot)
        .Number("limit_pct", "limit that the plant set itself", c => c.LimitPct)
        .Text("limit_set_reason", "why it did", c => c.LimitSetReason)
        .YesNo("fixed_centres", "whether the shafts cannot be moved", c => c.FixedCentres)
        .YesNo("runs_in_parallel", "whether it runs beside others that must keep pace", c => c.RunsInParallel)
        .YesNo("timing", "whether it times an engine", c => c.Timing)
        .YesNo("positioning", "whether it positions something", c => c.Positioning)
        .YesNo("high_performance", "whether its drive is a high-performance one", c => c.HighPerformance)
        .YesNo("lifts", "whether it lifts or holds a load", c => c.Lifts)
        .Number("centre_distance_mm", "distance of the shafts", c => c.CentreDistanceMm)
        .Number("take_up_travel_mm", "how far the take-up can move", c => c.TakeUpTravelMm)
        .Number("load_rel", "bearing pressure over the permissible", c => c.LoadRel)
        .Number("speed_m_s", "chain speed", c => c.SpeedMS)
        .Text("lubrication", "auto, manual, poor or dry", c => c.Lubrication is { } oil ? FileWords.Of(oil) : null)
        .Text("dust", "clean, moderate or heavy", c => c.Dust is { } dust ? FileWords.Of(dust) : null)
        .Number("ambient_c", "temperature around it", c => c.AmbientC)
        .Text("oil_method", "how it is oiled", c => c.OilMethod is { } method ? FileWords.Of(method) : null)
        .Text("oil_grade", "with which oil", c => c.OilGrade)
        .Number("oiling_interval_h", "the plant's own running hours between two oilings", c => c.OilingIntervalH)
        .Number("oiling_surroundings_factor", "factor on the handbook's interval", c => c.OilingSurroundingsFactor)
        .Table("chains", "A chain of the register as it stands now.", databases, (db, after) =>
            db.Chains.AsNoTracking().Where(c => c.Id > after).OrderBy(c => c.Id));
}
