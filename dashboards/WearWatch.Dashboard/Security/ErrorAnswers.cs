using Microsoft.AspNetCore.Diagnostics;
using WearWatch.Dashboard.Administration.People;
using WearWatch.Storage.Engines;

namespace WearWatch.Dashboard.Security;

/// <summary>
/// Lets an error keep its name: programs get a problem by RFC 9457 with its status, people a page with the same status, whatever
/// the method of the request was.
/// </summary>
internal static class ErrorAnswers
{
    /// <summary>Adds what answers when something fails.</summary>
    public static IServiceCollection AddErrorAnswers(this IServiceCollection services)
    {
        services.AddExceptionHandler<Handler>();
        return services.AddProblemDetails(options => options.CustomizeProblemDetails = context =>
        {
            if (Known(context.ProblemDetails.Status) is not var (kind, words)) return;
            context.ProblemDetails.Detail ??= T[words];
            context.ProblemDetails.Extensions.TryAdd("kind", kind);
        });
    }

    /// <summary>Answers errors from here on down the pipeline.</summary>
    public static void UseErrorAnswers(this IApplicationBuilder app)
    {
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            ExceptionHandlingPath = "/error",
            CreateScopeForErrors = true,
            StatusCodeSelector = StatusOf,
        });
        app.UseWhen(AccessAnswers.IsForProgram, programs => programs.UseStatusCodePages());
        app.UseWhen(
            http => !AccessAnswers.IsForProgram(http),
            people => people.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true));
    }

    private static int StatusOf(Exception error) => error switch
    {
        BadHttpRequestException bad => bad.StatusCode,
        _ => StoreFaults.Of(error) switch
        {
            StoreFault.Full => StatusCodes.Status507InsufficientStorage,
            StoreFault.Away => StatusCodes.Status503ServiceUnavailable,
            _ => StatusCodes.Status500InternalServerError,
        },
    };

    private static (string Kind, Phrase Words)? Known(int? status) => status switch
    {
        404 => ("not_found", $"There is nothing at this address; see /openapi/v1.json."),
        405 => ("wrong_method", $"This address does not know that method; see /openapi/v1.json."),
        413 => ("too_large", $"The request is too large. Nothing was stored."),
        415 => ("media_type", $"Send the content type that /openapi/v1.json names. Nothing was stored."),
        429 => ("too_many",
            $"Too many requests came from here. Wait a minute, then send it again with the same Idempotency-Key."),
        500 => ("failed",
            $"Something went wrong on our side. What was acknowledged is safe. Send it again with the same Idempotency-Key."),
        503 => ("store_away",
            $"The plant's memory cannot be reached. What was acknowledged is safe. Send it again later with the same key."),
        507 => ("disk_full",
            $"The disk is full. What was acknowledged is safe. Make room, then send it again with the same Idempotency-Key."),
        _ => null,
    };

    private sealed class Handler(IProblemDetailsService problems) : IExceptionHandler
    {
        public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken ct)
        {
            // The page of errors is drawn by GET, whatever failed.
            var asked = httpContext.Features.Get<IExceptionHandlerPathFeature>()?.Path;
            if (!AccessAnswers.IsForProgram(httpContext, asked))
            {
                httpContext.Request.Method = HttpMethods.Get;
                return false;
            }

            return await problems.TryWriteAsync(new() { HttpContext = httpContext, Exception = exception });
        }
    }
}
