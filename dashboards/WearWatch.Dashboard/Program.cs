using System.Globalization;
using Microsoft.AspNetCore.Localization;
using Radzen;
using WearWatch.Dashboard.ChainList;
using WearWatch.Dashboard.Engineering;
using WearWatch.Dashboard.Glance;
using WearWatch.Dashboard.OneChain;
using WearWatch.Dashboard.Security;
using WearWatch.Dashboard.Shell;
using WearWatch.Dashboard.Words;
using WearWatch.Worker;

var builder = WebApplication.CreateBuilder(args);
builder.Services.AddWearWatch(builder.Configuration);
builder.Services.AddRazorComponents().AddInteractiveServerComponents();
builder.Services.AddRadzenComponents();
builder.Services.AddRadzenCookieThemeService(options =>
{
    options.Name = ScreenLook.Cookie;
    options.Duration = TimeSpan.FromDays(365);
});
builder.Services.AddHealthChecks();
builder.Services.AddSingleton<PlantClock>();
builder.Services.AddSingleton<GlanceQuery>();
builder.Services.AddSingleton<ChainListQuery>();
builder.Services.AddSingleton<OneChainQuery>();
builder.Services.AddScoped<Signature>();
builder.Services.AddEngineeringDesk();

// One way to write dates and numbers whatever the browser asks for: 24 hours, weeks from Monday, a decimal point.
var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
culture.DateTimeFormat.FirstDayOfWeek = DayOfWeek.Monday;
culture.DateTimeFormat.ShortDatePattern = "yyyy-MM-dd";
culture.DateTimeFormat.ShortTimePattern = culture.DateTimeFormat.LongTimePattern = "HH:mm";

var app = builder.Build();
app.UseExceptionHandler("/error", createScopeForErrors: true);
app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
app.UseContentPolicy();
app.UseRequestLocalization(new RequestLocalizationOptions
{
    DefaultRequestCulture = new RequestCulture(culture),
    RequestCultureProviders = [],
});
app.UseAntiforgery();
app.MapStaticAssets();
app.MapEngineeringExports();
app.MapHealthChecks("/health");
app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
await app.RunAsync();
