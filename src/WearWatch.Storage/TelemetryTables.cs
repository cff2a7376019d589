using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>How the tables of telemetry are laid out.</summary>
internal static class TelemetryTables
{
    public static void Describe(ModelBuilder model)
    {
        model.Entity<TelemetryRow>(point =>
        {
            point.ToTable("Telemetry");
            point.HasIndex(p => p.MessageId).IsUnique();
            point.HasIndex(p => new { p.ChainId, p.Kind, p.At });
            point.HasIndex(p => p.At);
            point.HasIndex(p => p.Id).HasFilter("\"AwaitsForwarding\"").HasDatabaseName("IX_Telemetry_AwaitsForwarding");
            point.HasOne<ChainRow>().WithMany().HasForeignKey(p => p.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<TelemetryHourRow>(hour =>
        {
            hour.ToTable("TelemetryHours");
            hour.HasKey(h => new { h.ChainId, h.Kind, h.Hour });
            hour.HasIndex(h => h.Hour);
            hour.HasIndex(h => new { h.ChainId, h.Hour }).HasFilter("\"Concluded\" < \"Count\"")
                .HasDatabaseName("IX_TelemetryHours_ToConclude");
            hour.HasOne<ChainRow>().WithMany().HasForeignKey(h => h.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<TelemetryDayRow>(day =>
        {
            day.ToTable("TelemetryDays");
            day.HasKey(d => new { d.ChainId, d.Kind, d.Day });
            day.HasOne<ChainRow>().WithMany().HasForeignKey(d => d.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<ParkedRow>(parked =>
        {
            parked.HasKey(p => p.TelemetryId);
            parked.Property(p => p.TelemetryId).ValueGeneratedNever();
        });
        model.Entity<RunDayRow>(day =>
        {
            day.ToTable("RunDays");
            day.HasKey(d => new { d.ChainId, d.Day });
            day.HasOne<ChainRow>().WithMany().HasForeignKey(d => d.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<PassDayRow>(day =>
        {
            day.ToTable("PassDays");
            day.HasKey(d => new { d.ChainId, d.Day });
            day.HasOne<ChainRow>().WithMany().HasForeignKey(d => d.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<SensorPairRow>(pair =>
        {
            pair.ToTable("SensorPairs");
            pair.HasIndex(p => new { p.ChainId, p.From });
            pair.HasOne<ChainRow>().WithMany().HasForeignKey(p => p.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<SetAsideRow>(aside =>
        {
            aside.ToTable("SetAside");
            aside.HasIndex(a => a.Fingerprint).IsUnique();
            aside.HasIndex(a => new { a.Settlement, a.LastAt });
        });
    }
}
