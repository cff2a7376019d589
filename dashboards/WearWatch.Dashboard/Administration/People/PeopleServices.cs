using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.Identity;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Puts people, sign-in and what each may do into the dashboard.</summary>
internal static class PeopleServices
{
    private const string EitherScheme = "session or key";

    public static IServiceCollection AddPeople(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddSingleton<SetUp>().AddSingleton<SetUpCode>().AddSingleton<Standing>();
        services.AddSingleton<TabletCookie>().AddSingleton<DeviceCookie>().AddSingleton<IOrigin, RequestOrigin>();
        services.AddScoped<PersonPasskeys>();
        services.AddScoped<AuthenticationStateProvider, PagePerson>().AddScoped<CircuitHandler, RightsListener>()
            .AddCascadingAuthenticationState();
        services.AddSingleton<IAuthorizationMiddlewareResultHandler, AccessAnswers>();
        services.AddAllowed().AddSignInLimit().AddHttpContextAccessor();
        // A passkey stands for name and password both, so the device must know the person, and find the passkey without a name.
        services.Configure<IdentityPasskeyOptions>(options =>
            options.UserVerificationRequirement = options.ResidentKeyRequirement = "required");
        services.AddIdentityCore<PersonRow>(Rules).AddSignInManager<PersonSignIn>().AddPasswordValidator<GuessablePassword>();
        AddSessions(services);
        services.AddCompanySignIn(configuration.GetSection("WearWatch:OpenId"));
        services.AddAntiforgery(options => options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest);
        return services;
    }

    /// <summary>Puts them before the endpoints. The language is the person's, and known before anybody is refused.</summary>
    public static IApplicationBuilder UsePeople(this IApplicationBuilder app) => app
        .UseAuthentication().UseRequestLocalization(LanguageOfRequest.Options()).UseMiddleware<OpenUntilSetUp>().UseRateLimiter()
        .UseAuthorization();

    private static void Rules(IdentityOptions options)
    {
        options.Stores.SchemaVersion = IdentitySchemaVersions.Version3; // the one with passkeys
        options.User.AllowedUserNameCharacters = ""; // PersonName says which, in words
        options.Password.RequiredLength = IdentityWords.ShortestPassword;
        options.Password.RequiredUniqueChars = IdentityWords.FewestDifferent;
        // Length, not odd characters: NIST SP 800-63B asks for no rules of composition.
        options.Password.RequireDigit = options.Password.RequireLowercase = options.Password.RequireUppercase =
            options.Password.RequireNonAlphanumeric = false;
    }

    private static void AddSessions(IServiceCollection services)
    {
        var sessions = services.AddAuthentication(EitherScheme);
        sessions.AddPolicyScheme(EitherScheme, null, options => options.ForwardDefaultSelector = http =>
            KeySession.TokenOf(http.Request) is null ? IdentityConstants.ApplicationScheme : KeySession.Name);
        sessions.AddScheme<AuthenticationSchemeOptions, KeySession>(KeySession.Name, null);
        sessions.AddIdentityCookies(cookies => cookies.ApplicationCookie!.Configure(options =>
        {
            options.Cookie.Name = "wearwatch-person";
            options.Cookie.SameSite = SameSiteMode.Lax;
            options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
            options.ExpireTimeSpan = TimeSpan.FromDays(14);
            options.LoginPath = "/people/sign-in";
            options.AccessDeniedPath = "/people/refused";
            options.ReturnUrlParameter = "back";
            options.Events.OnValidatePrincipal = Standing.CheckAsync;
        }));
    }
}
