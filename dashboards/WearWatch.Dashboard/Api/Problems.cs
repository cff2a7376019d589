
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Api;

/// <summary>Error answers by RFC 9457, with what is wrong by field.</summary>
internal static class Problems
{
    /// <summary>Nothing of that name.</summary>
    public static IResult NotFound(string what) =>
        Results.Problem(statusCode: StatusCodes.Status404NotFound, title: "Not found", detail: what);

    /// <summary>The request itself cannot be read.</summary>
    public static IResult BadRequest(string detail) =>
        Results.Problem(statusCode: StatusCodes.Status400BadRequest, title: "The request cannot be read", detail: detail);

    /// <summary>
    /// The request can be read, but what it says cannot be taken: 409 for a key that was used for something else, else 422.
    /// </summary>
    public static IResult Refused(IReadOnlyList<Refusal> refusals) => refusals.Any(r => r.Field == "key")
        ? Results.Problem(
            statusCode: StatusCodes.Status409Conflict, title: "The Idempotency-Key was used for something else",
            detail: refusals.First(r => r.Field == "key").Reason)
        : Results.ValidationProblem(
            refusals.GroupBy(r => r.Field).ToDictionary(g => g.Key, g => g.Select(r => r.Reason).ToArray()),
            statusCode: StatusCodes.Status422UnprocessableEntity, title: "It was not taken");

    /// <summary>One field is wrong.</summary>
    public static IResult Refused(string field, string reason) => Refused([new Refusal(field, reason)]);
}
