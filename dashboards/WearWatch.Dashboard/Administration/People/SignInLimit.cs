using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Http.HttpResults;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>How often somebody may ask: at the door each address, behind it each person and each key.</summary>
internal static class SignInLimit
{
    public const string Name = "sign-in";

    /// <summary>Tries a minute: a whole shift behind one address may sign in, a guesser gets nowhere.</summary>
    public const int TriesPerMinute = 30;

    /// <summary>Requests that one person, key or unknown address may send at once.</summary>
    public const int AtOnce = 1000;

    /// <summary>Requests a second in the long run: a phone that sends a week's entries needs fewer.</summary>
    private const int PerSecond = 50;

    public static IServiceCollection AddSignInLimit(this IServiceCollection services) => services.AddRateLimiter(options =>
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.OnRejected = async (rejected, _) => await RefuseAsync(rejected.HttpContext);
        options.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(http => http.User.IsOpen()
            ? RateLimitPartition.GetNoLimiter("this machine, before anybody is set up")
            : RateLimitPartition.GetTokenBucketLimiter(AskerOf(http), _ => new()
            {
                TokenLimit = AtOnce,
                TokensPerPeriod = PerSecond,
                ReplenishmentPeriod = TimeSpan.FromSeconds(1),
            }));
        options.AddPolicy(Name, http => HttpMethods.IsPost(http.Request.Method)
            ? RateLimitPartition.GetFixedWindowLimiter(
                AddressOf(http), _ => new() { PermitLimit = TriesPerMinute, Window = TimeSpan.FromMinutes(1) })
            : RateLimitPartition.GetNoLimiter("not a sign-in"));
    });

    private static string AskerOf(HttpContext http) =>
        http.User.KeptName() is { } known ? "person or key " + known : "address " + AddressOf(http);

    private static string AddressOf(HttpContext http) => http.Connection.RemoteIpAddress?.ToString() ?? "";

    // What is left without a body for a program becomes a problem farther out.
    private static async Task RefuseAsync(HttpContext http)
    {
        http.Response.Headers.RetryAfter = "60";
        if (AccessAnswers.IsForProgram(http)) return;
        await new RazorComponentResult<DoorNotice>(new { Heading = T["Wait a minute"], Text = T[SignInWords.TooMany] })
        {
            StatusCode = StatusCodes.Status429TooManyRequests,
        }.ExecuteAsync(http);
    }
}
