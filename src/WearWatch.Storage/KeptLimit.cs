using System.Text.Json;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using WearWatch.Phrases;
using WearWatch.Wear;

namespace WearWatch.Storage;

/// <summary>Keeps a limit ahead in one column, as JSON; its cause with its facts, so that it is read in any language.</summary>
internal sealed class KeptLimit() : ValueConverter<LimitAhead?, string?>(
    limit => limit == null ? null : Write(limit), text => text == null ? null : Read(text))
{
    private static string Write(LimitAhead limit) => JsonSerializer.Serialize(
        new Kept(
            PhraseText.Of(limit.Cause), limit.IsOfSprockets, limit.HoursSince, limit.Forecast.LimitPercent,
            limit.Forecast.ProbabilityPassed)
        {
            PercentilesH = limit.Forecast.PercentilesHours,
        },
        JsonSerializerOptions.Default);

    private static LimitAhead Read(string text)
    {
        var kept = JsonSerializer.Deserialize<Kept>(text, JsonSerializerOptions.Default)
            ?? throw new InvalidDataException($"'{text}' is no limit ahead.");
        var forecast = new WearForecast
        {
            LimitPercent = kept.LimitPercent,
            ProbabilityPassed = kept.Passed,
            PercentilesHours = kept.PercentilesH,
        };
        return new LimitAhead(PhraseText.Read(kept.Cause), forecast, kept.HoursSince) { IsOfSprockets = kept.OfSprockets };
    }

    private sealed record Kept(string Cause, bool OfSprockets, double HoursSince, double LimitPercent, double Passed)
    {
        public IReadOnlyList<double> PercentilesH { get; init; } = [];
    }
}
