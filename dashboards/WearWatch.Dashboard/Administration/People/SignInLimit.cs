using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Http.HttpResults;
using WearWatch.Plant.People;

namespace WearWatch.Dashboard.Administration.People;

/// <summary>How often one address may try a password or a PIN, whatever the name.</summary>
internal static class SignInLimit
{
    public const string Name = "sign-in";

    /// <summary>Tries a minute: a whole shift behind one address may sign in, a guesser gets nowhere.</summary>
    public const int TriesPerMinute = 30;

    public static IServiceCollection AddSignInLimit(this IServiceCollection services) => services.AddRateLimiter(options =>
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.OnRejected = async (rejected, _) =>
            await new RazorComponentResult<DoorNotice>(new { Heading = "Wait a minute", Text = SignInWords.TooMany })
            {
                StatusCode = StatusCodes.Status429TooManyRequests,
            }.ExecuteAsync(rejected.HttpContext);
        options.AddPolicy(Name, http => HttpMethods.IsPost(http.Request.Method)
            ? RateLimitPartition.GetFixedWindowLimiter(
                http.Connection.RemoteIpAddress?.ToString() ?? "",
                _ => new() { PermitLimit = TriesPerMinute, Window = TimeSpan.FromMinutes(1) })
            : RateLimitPartition.GetNoLimiter("not a sign-in"));
    });
}
