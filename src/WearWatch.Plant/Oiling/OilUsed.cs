namespace WearWatch.Plant.Oiling;

/// <summary>Oil of one grade that was used in one month.</summary>
/// <param name="Month">The first day of the month, plant time.</param>
/// <param name="Grade">The grade as it was told; empty where it was not.</param>
/// <param name="Oilings">Oilings with it.</param>
/// <param name="Millilitres">What they took, of those that told how much.</param>
/// <param name="WithoutAmount">Oilings that did not tell how much.</param>
public sealed record OilUsed(DateOnly Month, string Grade, int Oilings, double Millilitres, int WithoutAmount);
