using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using WearWatch.Plant.Books;
using WearWatch.Plant.Costs;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Lifting;
using WearWatch.Plant.Mailing;
using WearWatch.Plant.Mappings;
using WearWatch.Plant.Notices;
using WearWatch.Plant.Oiling;
using WearWatch.Plant.People;
using WearWatch.Plant.Planning;
using WearWatch.Plant.Register;
using WearWatch.Plant.Rounds;
using WearWatch.Plant.Settings;
using WearWatch.Plant.Signals;
using WearWatch.Plant.Sparkplug;
using WearWatch.Plant.Studies;
using WearWatch.Plant.Telemetry;
using WearWatch.Plant.Tracking;
using WearWatch.Plant.Webhooks;
using WearWatch.Storage;
using WearWatch.Storage.Engines;
using WearWatch.Storage.Rows;
using WearWatch.Storage.Safekeeping;

namespace WearWatch.Plant;

/// <summary>Puts the plant's memory and everything that decides on it into a host.</summary>
public static class PlantServices
{
    /// <summary>Adds the plant's library.</summary>
    /// <param name="services">
    /// The host's services; they have to hold a <see cref="TimeProvider"/>, a <see cref="DataFolder"/> and a
    /// <see cref="WearStore"/>.
    /// </param>
    public static IServiceCollection AddPlant(this IServiceCollection services)
    {
        services.AddSingleton<IDbContextFactory<WearDb>>(provider => provider.GetRequiredService<WearStore>());
        services.AddSingleton<PlantNews>();
        services.AddSingleton<PlantSettings>();
        services.AddSingleton<PlantClock>();
        services.AddSingleton<FirstDay>();
        services.AddSingleton<FleetModels>();
        services.AddSingleton<Calibrations>();
        services.AddSingleton<LifeBook>();
        services.AddSingleton<CostQuery>();
        services.AddSingleton<KeptForecasts>();
        services.AddSingleton<RemadeForecasts>();
        services.AddSingleton<SpreadCheck>();
        services.AddSingleton<ChainReader>();
        services.AddSingleton<ChainReview>();
        services.AddSingleton<DueReviews>();
        services.AddSingleton<ForecastThinning>();
        services.AddSingleton<EntryQuestion>();
        services.AddSingleton<IntakeDesk>();
        services.AddSingleton<InspectionDesk>();
        services.AddSingleton<LinkMeasureDesk>();
        services.AddSingleton<PartDesk>();
        services.AddSingleton<RegisterDesk>();
        services.AddSingleton<LiftingCardDesk>();
        services.AddSingleton<ExaminationDesk>();
        services.AddSingleton<LiftingUseDesk>();
        services.AddSingleton<AppointmentDesk>();
        services.AddSingleton<LiftingReader>();
        services.AddSingleton<OilRound>();
        services.AddSingleton<OilConsumption>();
        services.AddSingleton<PlantIntervals>();
        services.AddSingleton<ColumnNames>();
        services.AddSingleton<FileImport>();
        services.AddSingleton<FileExport>();
        services.AddSingleton<Backups>();
        services.AddSingleton<Restoration>();
        services.AddSingleton<ChainIds>();
        services.AddSingleton<TelemetryNews>();
        services.AddSingleton<ActiveMappings>();
        services.AddSingleton<IForeignSignals, MappedSignals>();
        services.AddSingleton<SignalMappingDesk>();
        services.AddSingleton<HeardMessages>();
        services.AddSingleton<ListeningDesk>();
        services.AddSingleton<SparkplugSessions>();
        services.AddSingleton<TelemetryDesk>();
        services.AddSingleton<SetAsideDesk>();
        services.AddSingleton<TelemetryThinning>();
        services.AddSingleton<RunningConclusion>();
        services.AddSingleton<PassConclusion>();
        services.AddSingleton<SingleConclusions>();
        services.AddSingleton<SignalDesk>();
        services.AddSingleton<PlanQuery>();
        services.AddSingleton<KeptPlan>();
        services.AddSingleton<PlanInputs>();
        services.AddSingleton<PlanKeeping>();
        services.AddSingleton<AfterStopDesk>();
        services.AddSingleton<WorkOrderDesk>();
        services.AddSingleton<OrderDesk>();
        services.AddSingleton<PlanVersionDesk>();
        services.AddSingleton<PlanHistory>();
        services.AddSingleton<PlanDesk>();
        services.AddSingleton<SensorPairs>();
        services.AddSingleton<FloorQuery>();
        services.AddSingleton<RoundDesk>();
        services.AddSingleton<MeasureFirstQuery>();
        services.AddSingleton<NoticeDesk>();
        services.AddSingleton<NoticeStepDesk>();
        services.AddSingleton<PlantNoticeDesk>();
        services.AddSingleton<HandedEntryDesk>();
        services.AddSingleton<MailDesk>();
        services.AddSingleton<MailBox>();
        services.AddSingleton<WebhookHosts>();
        services.AddSingleton<WebhookDesk>();
        services.AddSingleton<WebhookWriter>();
        services.AddSingleton<WebhookBox>();
        services.AddSingleton<StudyBook>();
        services.AddPeople();
        return services;
    }

    /// <summary>Who may do what. People are asked for by a request, since their passwords are checked by its services.</summary>
    private static void AddPeople(this IServiceCollection services)
    {
        services.AddSingleton<PeopleNews>();
        services.TryAddSingleton<IOrigin, CommandOrigin>();
        services.AddSingleton<SecurityLog>();
        services.AddSingleton<SessionDesk>();
        services.AddSingleton<SignInTries>();
        services.AddScoped(provider => provider.GetRequiredService<IDbContextFactory<WearDb>>().CreateDbContext());
        services.AddScoped<IUserStore<PersonRow>, PersonStore>();
        services.AddSingleton<KeyDesk>();
        services.AddSingleton<TabletDesk>();
        services.AddScoped<PinDesk>();
        services.AddScoped<PeopleDesk>();
        services.AddScoped<SignInDesk>();
        services.AddScoped<PasskeyDesk>();
        services.AddScoped<CompanyDesk>();
        services.AddSingleton<CompanySessions>();
        services.AddSingleton<SharedKeyDesk>();
    }
}
