using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>How the register of lifting chains is laid out.</summary>
internal static class LiftingTables
{
    public static void Describe(ModelBuilder model)
    {
        model.Entity<LiftingFileRow>(file =>
        {
            file.HasIndex(f => f.Key).IsUnique();
            file.HasOne<ChainRow>().WithMany().HasForeignKey(f => f.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<LiftingCardRow>(card =>
        {
            card.HasIndex(c => c.Key).IsUnique();
            card.HasOne<ChainRow>().WithMany().HasForeignKey(c => c.ChainId).OnDelete(DeleteBehavior.Restrict);
            card.HasOne<LiftingFileRow>().WithMany().HasForeignKey(c => c.CertificateFileId).OnDelete(DeleteBehavior.Restrict);
            card.HasOne<LiftingFileRow>().WithMany().HasForeignKey(c => c.WrittenSchemeFileId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<AppointmentRow>(appointment =>
        {
            appointment.HasIndex(a => a.Person);
            appointment.HasOne<AppointmentRow>().WithMany().HasForeignKey(a => a.EndsId).OnDelete(DeleteBehavior.Restrict);
        });
        model.Entity<ExaminationRow>(examination =>
        {
            examination.HasIndex(e => new { e.KeyOwner, e.Key }).IsUnique();
            examination.HasOne<ChainRow>().WithMany().HasForeignKey(e => e.ChainId).OnDelete(DeleteBehavior.Restrict);
            examination.HasOne<AppointmentRow>().WithMany().HasForeignKey(e => e.AppointmentId).OnDelete(DeleteBehavior.Restrict);
            examination.HasOne<LiftingFileRow>().WithMany().HasForeignKey(e => e.FileId).OnDelete(DeleteBehavior.Restrict);
            examination.HasOne<ExaminationRow>().WithMany().HasForeignKey(e => e.CorrectsId).OnDelete(DeleteBehavior.Restrict);
            examination.Property(e => e.Points).HasConversion(new JsonList<PointResult>(), JsonList<PointResult>.Comparer);
        });
        model.Entity<LiftingStepRow>(step =>
        {
            step.HasIndex(s => s.Key).IsUnique();
            step.HasOne<ChainRow>().WithMany().HasForeignKey(s => s.ChainId).OnDelete(DeleteBehavior.Restrict);
            step.HasOne<AppointmentRow>().WithMany().HasForeignKey(s => s.AppointmentId).OnDelete(DeleteBehavior.Restrict);
            step.Property(s => s.Closes).HasConversion(new JsonList<InspectionPoint>(), JsonList<InspectionPoint>.Comparer);
        });
        model.Entity<LiftingStateRow>(state =>
        {
            state.HasKey(s => s.ChainId);
            state.Property(s => s.ChainId).ValueGeneratedNever();
            state.HasOne<ChainRow>().WithMany().HasForeignKey(s => s.ChainId).OnDelete(DeleteBehavior.Restrict);
            state.Property(s => s.Faults).HasConversion(new JsonList<LiftingFault>(), JsonList<LiftingFault>.Comparer);
        });
        model.Entity<LinkMeasureRow>(measure =>
        {
            measure.HasIndex(m => new { m.KeyOwner, m.Key }).IsUnique();
            measure.HasIndex(m => m.ChainId);
            measure.HasOne<ChainRow>().WithMany().HasForeignKey(m => m.ChainId).OnDelete(DeleteBehavior.Restrict);
            measure.HasOne<LinkMeasureRow>().WithMany().HasForeignKey(m => m.CorrectsId).OnDelete(DeleteBehavior.Restrict);
        });
    }
}
