using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Phrases;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;

namespace WearWatch.Storage;

/// <summary>The plant's memory: the register, raw readings and events, and what was concluded from them.</summary>
/// <remarks>As it stands here it is kept in SQLite; <see cref="PostgresWearDb"/> is the same in PostgreSQL.</remarks>
public partial class WearDb : DbContext
{
    public WearDb(DbContextOptions<WearDb> options)
        : base(options)
    {
    }

    /// <summary>For the same memory in another engine, which has migrations of its own.</summary>
    protected WearDb(DbContextOptions options)
        : base(options)
    {
    }

    public DbSet<PlantRow> Plants => Set<PlantRow>();

    public DbSet<ChainRow> Chains => Set<ChainRow>();

    public DbSet<CardChangeRow> CardChanges => Set<CardChangeRow>();

    public DbSet<ReadingRow> Readings => Set<ReadingRow>();

    public DbSet<EventRow> Events => Set<EventRow>();

    public DbSet<ForecastRow> Forecasts => Set<ForecastRow>();

    public DbSet<TrackRow> Tracks => Set<TrackRow>();

    public DbSet<MeasuringStudyRow> MeasuringStudies => Set<MeasuringStudyRow>();

    public DbSet<NoticeRow> Notices => Set<NoticeRow>();

    public DbSet<NoticeStepRow> NoticeSteps => Set<NoticeStepRow>();

    public DbSet<MailWishRow> MailWishes => Set<MailWishRow>();

    public DbSet<MailRow> Mails => Set<MailRow>();

    public DbSet<MailedNoticeRow> MailedNotices => Set<MailedNoticeRow>();

    public DbSet<FleetModelRow> FleetModels => Set<FleetModelRow>();

    public DbSet<CalibrationRow> Calibrations => Set<CalibrationRow>();

    public DbSet<SpreadRow> Spreads => Set<SpreadRow>();

    public DbSet<PlantNoticeRow> PlantNotices => Set<PlantNoticeRow>();

    public DbSet<ImportRow> Imports => Set<ImportRow>();

    public DbSet<ColumnNameRow> ColumnNames => Set<ColumnNameRow>();

    public DbSet<WindowRuleRow> WindowRules => Set<WindowRuleRow>();

    public DbSet<SpareRow> Spares => Set<SpareRow>();

    public DbSet<PlanningCostsRow> PlanningCosts => Set<PlanningCostsRow>();

    public DbSet<LineCostRow> LineCosts => Set<LineCostRow>();

    public DbSet<SwapWorkRow> SwapWorks => Set<SwapWorkRow>();

    public DbSet<SwapTermsRow> SwapTerms => Set<SwapTermsRow>();

    public DbSet<SwapRow> Swaps => Set<SwapRow>();

    public DbSet<PurchaseRow> Purchases => Set<PurchaseRow>();

    public DbSet<PlanVersionRow> PlanVersions => Set<PlanVersionRow>();

    /// <summary>The swaps that are planned for a shutdown and not done yet: at most one a chain.</summary>
    public IQueryable<SwapRow> PlannedSwaps => Swaps.Where(s => s.Outcome == SwapEnd.Planned && s.Start != null);

    public DbSet<TelemetryRow> Telemetry => Set<TelemetryRow>();

    public DbSet<TelemetryHourRow> TelemetryHours => Set<TelemetryHourRow>();

    public DbSet<TelemetryDayRow> TelemetryDays => Set<TelemetryDayRow>();

    public DbSet<SetAsideRow> SetAside => Set<SetAsideRow>();

    public DbSet<OilTermsRow> OilTerms => Set<OilTermsRow>();

    public DbSet<JobRunRow> JobRuns => Set<JobRunRow>();

    public DbSet<ParkedRow> Parked => Set<ParkedRow>();

    public DbSet<SharedKeyRow> SharedKeys => Set<SharedKeyRow>();

    public DbSet<WalkRow> Walks => Set<WalkRow>();

    public DbSet<RoundHandRow> RoundHands => Set<RoundHandRow>();

    public DbSet<RunDayRow> RunDays => Set<RunDayRow>();

    public DbSet<PassDayRow> PassDays => Set<PassDayRow>();

    public DbSet<SensorPairRow> SensorPairs => Set<SensorPairRow>();

    public DbSet<PersonRow> People => Set<PersonRow>();

    public DbSet<TabletRow> Tablets => Set<TabletRow>();

    public DbSet<ApiKeyRow> ApiKeys => Set<ApiKeyRow>();

    public DbSet<SessionRow> Sessions => Set<SessionRow>();

    public DbSet<CompanySessionRow> CompanySessions => Set<CompanySessionRow>();

    public DbSet<SignInTryRow> SignInTries => Set<SignInTryRow>();

    public DbSet<SecurityEventRow> SecurityEvents => Set<SecurityEventRow>();

    public DbSet<InspectionRow> Looks => Set<InspectionRow>();

    public DbSet<PhotoRow> Photos => Set<PhotoRow>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        // SQLite cannot order or compare DateTimeOffset, PostgreSQL rounds it to the microsecond; ticks in UTC suit both.
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcTicks>();
        configurationBuilder.Properties<ChainFamily>().HaveConversion<FamilyName>();
        configurationBuilder.Properties<Phrase>().HaveConversion<KeptPhrase>();
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<ChainRow>(chain =>
        {
            chain.HasIndex(c => c.Name).IsUnique();
            chain.HasIndex(c => new { c.Line, c.Position });
            chain.Property(c => c.SprocketTeeth).HasConversion(new JsonList<int>(), JsonList<int>.Comparer);
        });
        modelBuilder.Entity<CardChangeRow>(change =>
        {
            change.HasIndex(c => c.ChainId);
            change.HasOne<ChainRow>().WithMany().HasForeignKey(c => c.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        modelBuilder.Entity<ReadingRow>(reading =>
        {
            reading.HasIndex(r => new { r.KeyOwner, r.Key }).IsUnique();
            reading.HasIndex(r => r.ChainId);
            reading.HasIndex(r => r.Fingerprint);
            reading.HasOne<ChainRow>().WithMany().HasForeignKey(r => r.ChainId).OnDelete(DeleteBehavior.Restrict);
            reading.HasOne<ReadingRow>().WithMany().HasForeignKey(r => r.CorrectsId).OnDelete(DeleteBehavior.Restrict);
        });
        modelBuilder.Entity<EventRow>(happening =>
        {
            happening.HasIndex(e => new { e.KeyOwner, e.Key }).IsUnique();
            happening.HasIndex(e => e.ChainId);
            happening.HasIndex(e => e.Fingerprint);
            happening.HasOne<ChainRow>().WithMany().HasForeignKey(e => e.ChainId).OnDelete(DeleteBehavior.Restrict);
            happening.HasOne<EventRow>().WithMany().HasForeignKey(e => e.CorrectsId).OnDelete(DeleteBehavior.Restrict);
        });
        modelBuilder.Entity<ForecastRow>(forecast =>
        {
            forecast.HasIndex(f => new { f.ChainId, f.IsLatest });
            forecast.HasIndex(f => new { f.IsLatest, f.EarlyDate });
            forecast.HasOne<ChainRow>().WithMany().HasForeignKey(f => f.ChainId).OnDelete(DeleteBehavior.Restrict);
            forecast.Property(f => f.Sooner).HasConversion(new KeptLimit());
            forecast.Ignore(f => f.First);
            forecast.Property(f => f.PercentilesH).HasConversion(new JsonList<double>(), JsonList<double>.Comparer);
        });
        modelBuilder.Entity<TrackRow>(track =>
        {
            track.HasKey(t => t.ChainId);
            track.Property(t => t.ChainId).ValueGeneratedNever();
            track.HasOne<ChainRow>().WithMany().HasForeignKey(t => t.ChainId).OnDelete(DeleteBehavior.Restrict);
        });
        NoticeTables.Describe(modelBuilder);
        MailTables.Describe(modelBuilder);
        WebhookTables.Describe(modelBuilder);
        modelBuilder.Entity<FleetModelRow>().HasIndex(m => m.Version).IsUnique();
        modelBuilder.Entity<ImportRow>().HasIndex(i => i.ReceivedAt);
        modelBuilder.Entity<ColumnNameRow>().HasIndex(n => new { n.Kind, n.Theirs }).IsUnique();
        PlanTables.Describe(modelBuilder);
        WorkOrderTables.Describe(modelBuilder);
        modelBuilder.Entity<JobRunRow>().HasKey(j => j.Job);
        TelemetryTables.Describe(modelBuilder);
        ForeignTables.Describe(modelBuilder);
        FloorTables.Describe(modelBuilder);
        PeopleTables.Describe(modelBuilder);
        SecurityTables.Describe(modelBuilder);
        LiftingTables.Describe(modelBuilder);
    }
}
