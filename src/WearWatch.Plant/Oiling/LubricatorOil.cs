using WearWatch.Signals;
using WearWatch.Storage;

namespace WearWatch.Plant.Oiling;

/// <summary>Oil that a lubricator gave a chain, as its strokes tell.</summary>
public sealed class LubricatorOil
{
    /// <summary>The chain's number in the database.</summary>
    public int ChainId { get; init; }

    /// <summary>The beginning of the hour or day in which it was given.</summary>
    public DateTimeOffset At { get; init; }

    /// <summary>How much. A cubic centimetre is a millilitre.</summary>
    public double Millilitres { get; init; }

    /// <summary>What all lubricators gave, by hour, and by day where the hours are no longer kept.</summary>
    public static IQueryable<LubricatorOil> In(WearDb db) => db.TelemetryHours
        .Where(h => h.Kind == TelemetryKind.Oiling && h.Sum > 0)
        .Select(h => new LubricatorOil { ChainId = h.ChainId, At = h.Hour, Millilitres = h.Sum })
        .Concat(db.TelemetryDays
            .Where(d => d.Kind == TelemetryKind.Oiling && d.Sum > 0)
            .Select(d => new LubricatorOil { ChainId = d.ChainId, At = d.Day, Millilitres = d.Sum }));
}
