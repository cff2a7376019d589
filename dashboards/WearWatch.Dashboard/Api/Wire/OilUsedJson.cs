namespace WearWatch.Dashboard.Api.Wire;

/// <summary>Oil of one grade used in one month.</summary>
internal sealed record OilUsedJson(DateOnly Month, string Grade, int Oilings, double AmountMl, int OilingsWithoutAmount);
