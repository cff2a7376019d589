using System.Globalization;
using System.Text.Json.Nodes;
using WearWatch.Plant.Settings;

namespace WearWatch.Dashboard.Kit.Answers;

/// <summary>
/// Error answers by RFC 9457: a stable word for the kind, the sentence in the asked language, and its figures as fields.
/// </summary>
public static class Problems
{
    /// <summary>Every kind that an answer can have, with its status; docs/api-errors.md says what each means.</summary>
    public static IReadOnlyDictionary<string, int> Kinds { get; } = new Dictionary<string, int>
    {
        ["unreadable"] = StatusCodes.Status400BadRequest,
        ["no_key"] = StatusCodes.Status400BadRequest,
        ["not_signed_in"] = StatusCodes.Status401Unauthorized,
        ["missing_role"] = StatusCodes.Status403Forbidden,
        ["not_set_up"] = StatusCodes.Status403Forbidden,
        ["foreign_origin"] = StatusCodes.Status403Forbidden,
        ["other_maker"] = StatusCodes.Status403Forbidden,
        ["not_found"] = StatusCodes.Status404NotFound,
        ["key_reused"] = StatusCodes.Status409Conflict,
        ["wrong_method"] = StatusCodes.Status405MethodNotAllowed,
        ["overtaken"] = StatusCodes.Status409Conflict,
        ["too_large"] = StatusCodes.Status413PayloadTooLarge,
        ["media_type"] = StatusCodes.Status415UnsupportedMediaType,
        ["refused"] = StatusCodes.Status422UnprocessableEntity,
        ["too_many"] = StatusCodes.Status429TooManyRequests,
        ["failed"] = StatusCodes.Status500InternalServerError,
        ["store_away"] = StatusCodes.Status503ServiceUnavailable,
        ["disk_full"] = StatusCodes.Status507InsufficientStorage,
    };

    /// <summary>An answer.</summary>
    /// <param name="kind">One of <see cref="Kinds"/>.</param>
    /// <param name="title">What happened, the same for every answer of the kind.</param>
    /// <param name="detail">What is wrong this time and what would do.</param>
    public static IResult Of(string kind, Phrase title, Phrase detail) => Results.Problem(
        statusCode: Kinds[kind], title: T[title], detail: T[detail],
        extensions: new Dictionary<string, object?>
        {
            ["kind"] = kind,
            ["form"] = detail.Form,
            ["figures"] = Figures(detail),
        });

    /// <summary>Nothing of that name.</summary>
    public static IResult NotFound(Phrase what) => Of("not_found", $"Not found", what);

    /// <summary>The request itself cannot be read.</summary>
    public static IResult BadRequest(Phrase detail) => Of("unreadable", $"The request cannot be read", detail);

    /// <summary>The request has a body of another kind.</summary>
    public static IResult MediaType(string wanted) =>
        Of("media_type", $"The body is of another kind", $"Send {wanted}.");

    /// <summary>
    /// The request can be read, but what it says cannot be taken: 409 for a key that was used for something else, else 422.
    /// </summary>
    public static IResult Refused(IReadOnlyList<Refusal> refusals) => refusals.FirstOrDefault(r => r.Field == "key") is { } key
        ? Of("key_reused", $"The Idempotency-Key was used for something else", key.Reason)
        : Results.ValidationProblem(
            refusals.GroupBy(r => r.Field).ToDictionary(g => g.Key, g => g.Select(r => T[r.Reason]).ToArray()),
            statusCode: Kinds["refused"], title: T["It was not taken"],
            extensions: new Dictionary<string, object?>
            {
                ["kind"] = "refused",
                ["refusals"] = new JsonArray([.. refusals.Select(Facts)]),
            });

    /// <summary>One field is wrong.</summary>
    public static IResult Refused(string field, Phrase reason) => Refused([new Refusal(field, reason)]);

    /// <summary>A refusal for programs that have words of their own: the English form and what fills its holes.</summary>
    private static JsonObject Facts(Refusal refusal) => new()
    {
        ["field"] = refusal.Field,
        ["form"] = refusal.Reason.Form,
        ["figures"] = Figures(refusal.Reason),
    };

    private static JsonArray Figures(Phrase phrase) => new([.. phrase.Facts.Select(fact => Figure(fact.Value))]);

    private static JsonValue? Figure(object? value) => value switch
    {
        null => null,
        int or long or double or float or decimal => JsonValue.Create(Convert.ToDouble(value, CultureInfo.InvariantCulture)),
        DateOnly day => JsonValue.Create(day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        DateTime or DateTimeOffset => JsonValue.Create(
            ((IFormattable)value).ToString("yyyy-MM-ddTHH:mm:ssK", CultureInfo.InvariantCulture)),
        var other => JsonValue.Create(other.ToString()),
    };
}
