using Microsoft.EntityFrameworkCore;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <content>Chains that lift, and what else than length is measured at a chain.</content>
public partial class WearDb
{
    public DbSet<LiftingCardRow> LiftingCards => Set<LiftingCardRow>();

    public DbSet<LiftingFileRow> LiftingFiles => Set<LiftingFileRow>();

    public DbSet<AppointmentRow> Appointments => Set<AppointmentRow>();

    public DbSet<ExaminationRow> Examinations => Set<ExaminationRow>();

    public DbSet<LiftingStepRow> LiftingSteps => Set<LiftingStepRow>();

    public DbSet<LiftingStateRow> LiftingStates => Set<LiftingStateRow>();

    public DbSet<LinkMeasureRow> LinkMeasures => Set<LinkMeasureRow>();

    public DbSet<PartReadingRow> PartReadings => Set<PartReadingRow>();
}
