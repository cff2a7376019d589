using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.Identity;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>Puts people, sign-in and what each may do into the dashboard.</summary>
internal static class PeopleServices
{
    private const string EitherScheme = "session or key";

    public static IServiceCollection AddPeople(this IServiceCollection services)
    {
        services.AddSingleton<SetUp>().AddSingleton<Standing>().AddSingleton<TabletCookie>();
        services.AddScoped<PersonPasskeys>();
        services.AddScoped<AuthenticationStateProvider, PagePerson>().AddScoped<CircuitHandler, RightsListener>()
            .AddCascadingAuthenticationState();
        services.AddSingleton<IAuthorizationMiddlewareResultHandler, AccessAnswers>();
        services.AddAllowed().AddSignInLimit().AddHttpContextAccessor();
        // A passkey stands for name and password both, so the device must know the person, and find the passkey without a name.
        services.Configure<IdentityPasskeyOptions>(options =>
            options.UserVerificationRequirement = options.ResidentKeyRequirement = "required");
        services.AddIdentityCore<PersonRow>(Rules).AddSignInManager<PersonSignIn>()
            .AddClaimsPrincipalFactory<PersonSignIn.Claims>();
        AddSessions(services);
        services.AddAntiforgery(options => options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest);
        return services;
    }

    public static IApplicationBuilder UsePeople(this IApplicationBuilder app) => app
        .UseAuthentication().UseMiddleware<OpenUntilSetUp>().UseRateLimiter().UseAuthorization();

    private static void Rules(IdentityOptions options)
    {
        options.Stores.SchemaVersion = IdentitySchemaVersions.Version3; // the one with passkeys
        options.User.AllowedUserNameCharacters = ""; // PersonName says which, in words
        options.Password.RequiredLength = 10;
        options.Password.RequiredUniqueChars = 5;
        // Length, not odd characters: NIST SP 800-63B asks for no rules of composition.
        options.Password.RequireDigit = options.Password.RequireLowercase = options.Password.RequireUppercase =
            options.Password.RequireNonAlphanumeric = false;
        options.Lockout.MaxFailedAccessAttempts = 5;
        options.Lockout.DefaultLockoutTimeSpan = Pin.Locked;
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
