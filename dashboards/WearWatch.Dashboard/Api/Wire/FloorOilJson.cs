using WearWatch.Plant.Rounds;

namespace WearWatch.Dashboard.Api.Wire;

/// <summary>How a chain's lubrication is recorded (tap, form, inspection), and its usual method, oil and amount.</summary>
internal sealed record FloorOilJson(string Entry, string Method, string Grade, double? AmountMl)
{
    /// <summary>Null where nothing is foreseen.</summary>
    public static FloorOilJson? Of(FloorOil? oil) => oil is not { Entry: var entry, Usual: var usual }
        ? null
        : new(Tokens.Of(entry), usual.Method is { } method ? Tokens.Of(method) : "", usual.Grade, usual.AmountMl);
}
