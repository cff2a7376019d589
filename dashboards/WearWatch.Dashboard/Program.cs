using System.Globalization;
using System.Text.Json;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Localization;
using Microsoft.Extensions.Options;
using Radzen;
using WearWatch.Dashboard;
using WearWatch.Dashboard.Administration.Importing;
using WearWatch.Dashboard.Administration.People;
using WearWatch.Dashboard.Api;
using WearWatch.Dashboard.Engineer;
using WearWatch.Dashboard.Engineer.Workbench;
using WearWatch.Dashboard.Engineer.Workbench.ChainTypes;
using WearWatch.Dashboard.Kit.Look;
using WearWatch.Dashboard.Kit.Pages;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Dashboard.Lifting;
using WearWatch.Dashboard.Planner;
using WearWatch.Dashboard.Security;
using WearWatch.Dashboard.Shell;
using WearWatch.Dashboard.Technician.Floor;
using WearWatch.Dashboard.Technician.Oiling;
using WearWatch.Dashboard.Technician.Rounds;
using WearWatch.Plant.Bench;
using WearWatch.Plant.Planning;
using WearWatch.Worker;
using WearWatch.Worker.Demo;

var builder = WebApplication.CreateBuilder(args);
builder.Services.AddWearWatch(builder.Configuration);
builder.Services.AddRazorComponents().AddInteractiveServerComponents();
builder.Services.AddRadzenComponents();
builder.Services.AddRadzenCookieThemeService(options =>
{
    options.Name = ScreenLook.Cookie;
    options.Duration = TimeSpan.FromDays(365);
});
builder.Services.AddDataProtection().SetApplicationName("WearWatch");
builder.Services.AddSingleton<IConfigureOptions<KeyManagementOptions>, KeyRing>();
builder.Services.AddQueries();
builder.Services.AddScoped<Signature>();
builder.Services.AddPeople();
builder.Services.AddEngineerServices();
builder.Services.AddSingleton<PlantTypes>();

builder.Services.AddOpenApi("v1", options =>
{
    options.ShouldInclude = route => route.RelativePath?.StartsWith("api/v1", StringComparison.Ordinal) == true;
    options.AddDocumentTransformer((document, _, _) =>
    {
        (document.Info.Title, document.Info.Version) = ("WearWatch", "v1");
        return Task.CompletedTask;
    });
});
builder.Services.AddProblemDetails();
builder.Services.ConfigureHttpJsonOptions(options =>
{
    options.SerializerOptions.TypeInfoResolverChain.Insert(0, WireShapes.Resolver);
    options.SerializerOptions.TypeInfoResolverChain.Insert(1, BenchJson.Default);
    options.SerializerOptions.TypeInfoResolverChain.Insert(2, PlanningJson.Default);
    options.SerializerOptions.PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower;
});
builder.Services.Configure<FormOptions>(options => options.MultipartBodyLengthLimit = ChosenFiles.MostBytes);
builder.WebHost.ConfigureKestrel(options => options.Limits.MaxRequestBodySize = ChosenFiles.MostBytes);

// One way to write dates and numbers whatever the browser asks for: 24 hours, weeks from Monday, a decimal point.
var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
culture.DateTimeFormat.FirstDayOfWeek = DayOfWeek.Monday;
culture.DateTimeFormat.ShortDatePattern = "yyyy-MM-dd";
culture.DateTimeFormat.ShortTimePattern = culture.DateTimeFormat.LongTimePattern = "HH:mm";

var app = builder.Build();
if (args is [AdministratorCommand.Word, var name]) return await AdministratorCommand.RunAsync(app.Services, name);
app.UseExceptionHandler("/error", createScopeForErrors: true);
app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
app.UseMovedAddresses();
app.UseContentPolicy();
app.UseRequestLocalization(new RequestLocalizationOptions
{
    DefaultRequestCulture = new RequestCulture(culture),
    RequestCultureProviders = [],
});
app.UsePeople();
app.UseAntiforgery();
app.MapStaticAssets().AllowAnonymous();
app.MapEngineeringExports();
app.MapUnits();
app.MapPasskeys();
app.MapHealth();
app.MapApi();
app.MapFloor();
app.MapPaper();
app.MapLiftingFiles();
app.MapPlanFiles();
app.MapOilFiles();
app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
try
{
    await app.StartAsync();
}
catch (IOException taken) when (taken.InnerException is AddressInUseException)
{
    app.Logger.AddressTaken(taken.Message);
    return 1;
}

if (!await app.Services.GetRequiredService<SetUp>().IsDoneAsync()
    && app.Urls.FirstOrDefault(url => !SetUp.IsNear(url)) is { } reachable)
{
    app.Logger.NotSetUp(reachable);
    await app.StopAsync();
    return 1;
}

if (args.Contains("demo")) await LoadDemoAsync(app);
await app.WaitForShutdownAsync();
return 0;

static async Task LoadDemoAsync(WebApplication app)
{
    app.Logger.LoadingDemo();
    var report = await app.Services.GetRequiredService<DemoPlant>().LoadAsync(null, app.Lifetime.ApplicationStopping);
    app.Logger.DemoLoaded(report.Taken, report.AlreadyKnown);
}
