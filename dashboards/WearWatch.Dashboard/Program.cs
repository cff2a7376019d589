using System.Text.Json;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.Options;
using Radzen;
using WearWatch.Dashboard;
using WearWatch.Dashboard.Administration.Importing;
using WearWatch.Dashboard.Administration.People;
using WearWatch.Dashboard.Administration.Trail;
using WearWatch.Dashboard.Api;
using WearWatch.Dashboard.Engineer;
using WearWatch.Dashboard.Engineer.Workbench;
using WearWatch.Dashboard.Engineer.Workbench.ChainTypes;
using WearWatch.Dashboard.Kit.Look;
using WearWatch.Dashboard.Kit.Pages;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Dashboard.Lifting;
using WearWatch.Dashboard.Mailing;
using WearWatch.Dashboard.Overview.ChainList;
using WearWatch.Dashboard.Planner;
using WearWatch.Dashboard.Security;
using WearWatch.Dashboard.Shell;
using WearWatch.Dashboard.Technician.Floor;
using WearWatch.Dashboard.Technician.Oiling;
using WearWatch.Dashboard.Technician.Rounds;
using WearWatch.Plant.Bench;
using WearWatch.Plant.Planning;
using WearWatch.Worker;
using WearWatch.Worker.Commands;
using WearWatch.Worker.Demo;

try
{
    return await RunAsync(args);
}
catch (Exception error) when (BrokenStart.Of(error) is { } broken)
{
    await Console.Error.WriteLineAsync(broken.ToString());
    return broken.Code;
}

static async Task<int> RunAsync(string[] args)
{
    if (args is ["--version"])
    {
        Console.WriteLine(ProgramVersion.Text);
        return 0;
    }

    var builder = WebApplication.CreateBuilder(SafeStart.Options(args));
    SafeStart.AddDefaults(builder.Configuration);
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
    builder.Services.AddPeople(builder.Configuration);
    builder.Services.AddEngineerServices();
    builder.Services.AddNoticeMail(builder.Configuration);
    builder.Services.AddSingleton<PlantTypes>();

    builder.Services.AddApiDescription();
    builder.Services.AddPackedAnswers();
    builder.Services.AddErrorAnswers();
    builder.Services.AddTrustedProxies(builder.Configuration);
    builder.Services.ConfigureHttpJsonOptions(options =>
    {
        options.SerializerOptions.TypeInfoResolverChain.Insert(0, WireShapes.Resolver);
        options.SerializerOptions.TypeInfoResolverChain.Insert(1, BenchJson.Default);
        options.SerializerOptions.TypeInfoResolverChain.Insert(2, PlanningJson.Default);
        options.SerializerOptions.PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower;
        options.SerializerOptions.Converters.Add(new SentenceConverter(phrase => T[phrase]));
    });
    builder.Services.Configure<FormOptions>(options => options.MultipartBodyLengthLimit = ChosenFiles.MostBytes);
    builder.WebHost.ConfigureKestrel(options => options.Limits.MaxRequestBodySize = RequestSize.Usual);

    var app = builder.Build();
    if (args is [AdministratorCommand.Word, var name]) return await AdministratorCommand.RunAsync(app.Services, name);
    app.UseForwardedHeaders();
    app.UseResponseCompression();
    app.UseContentPolicy();
    app.UseErrorAnswers();
    app.RefuseForeignOrigin();
    app.UseMovedAddresses();
    app.UsePeople();
    app.UseAntiforgery();
    app.MapStaticAssets().AllowAnonymous().DisableRateLimiting();
    app.MapEngineeringExports();
    app.MapUnits();
    app.MapLanguage();
    app.MapPasskeys();
    app.MapCompanySignIn();
    app.MapSecurityLog();
    app.MapHealth();
    app.MapApi();
    app.MapFloor();
    app.MapPaper();
    app.MapLiftingFiles();
    app.MapPlanFiles();
    app.MapChainListFile();
    app.MapRefusedRows();
    app.MapOilFiles();
    app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
    await app.OpenMemoryAsync();
    await app.StartAsync();

    if (!await app.Services.GetRequiredService<SetUp>().IsDoneAsync())
        app.Logger.NotSetUp(app.Urls.First(), app.Services.GetRequiredService<SetUpCode>().Text);

    if (args.Contains("demo")) await LoadDemoAsync(app);
    await app.WaitForShutdownAsync();
    return 0;
}

static async Task LoadDemoAsync(WebApplication app)
{
    app.Logger.LoadingDemo();
    var report = await app.Services.GetRequiredService<DemoPlant>().LoadAsync(null, app.Lifetime.ApplicationStopping);
    app.Logger.DemoLoaded(report.Taken, report.AlreadyKnown);
}
