using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Diagnostics;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>
/// Refuses to save a change to what was told: readings, events and changes of a card are only ever added, of a forecast only its
/// newest-flag changes; people are never deleted.
/// </summary>
public sealed class AppendOnly : SaveChangesInterceptor
{
    private AppendOnly()
    {
    }

    public static AppendOnly Instance { get; } = new();

    public override InterceptionResult<int> SavingChanges(DbContextEventData eventData, InterceptionResult<int> result)
    {
        Check(eventData.Context);
        return result;
    }

    public override ValueTask<InterceptionResult<int>> SavingChangesAsync(
        DbContextEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        Check(eventData.Context);
        return ValueTask.FromResult(result);
    }

    private static void Check(DbContext? db)
    {
        foreach (var entry in db?.ChangeTracker.Entries() ?? [])
        {
            if (entry.State is EntityState.Deleted && (IsKeptForEver(entry) || IsMaker(entry)))
                throw new InvalidOperationException($"{entry.Metadata.ClrType.Name} is kept for ever and cannot be deleted.");
            if (entry.State is EntityState.Modified
                && entry.Properties.FirstOrDefault(p => p.IsModified && IsFixed(entry, p)) is { } changed)
                throw new InvalidOperationException(
                    $"{entry.Metadata.ClrType.Name}.{changed.Metadata.Name} is kept as it was recorded; "
                    + "add a correcting row instead.");
        }
    }

    private static bool IsKeptForEver(EntityEntry entry) =>
        entry.Entity is ReadingRow or EventRow or ForecastRow or FleetModelRow or CardChangeRow or MeasuringStudyRow
            or TelemetryRow
        or RoundHandRow or InspectionRow or PhotoRow or SensorPairRow or SpreadRow or LiftingCardRow or LiftingFileRow
        or AppointmentRow or ExaminationRow or LiftingStepRow or LinkMeasureRow or PartReadingRow or SecurityEventRow
            or NoticeStepRow or SignalMappingRow;

    // Entries keep the name of their maker, so a maker is switched off or withdrawn, never deleted.
    private static bool IsMaker(EntityEntry entry) => entry.Entity is PersonRow or ApiKeyRow or TabletRow;

    private static bool IsFixed(EntityEntry entry, PropertyEntry property) =>
        IsKeptForEver(entry) && (entry.Entity, property.Metadata.Name) is not
        ((ForecastRow, nameof(ForecastRow.IsLatest)) or (TelemetryRow, nameof(TelemetryRow.AwaitsForwarding)));
}
