using System.Globalization;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineer.Record;

/// <summary>What is assumed of how wear goes, and what the plant's chains have made of it.</summary>
/// <param name="Lines">What, as assumed without the plant's chains, as it is in use.</param>
/// <param name="Curve">The plant's own curve in a sentence.</param>
public sealed record TaughtWear(IReadOnlyList<(string What, string Assumed, string Here)> Lines, string Curve)
{
    /// <summary>What some constants say.</summary>
    public static TaughtWear Of(WearConstants here)
    {
        return new(
        [
            Line("wear rate wanders in 1,000 h by", c => Percent(Math.Sqrt(c.RateDrift))),
            Line("wear of 1,000 h is uneven by", c => Percent(Math.Sqrt(c.UnevenWear))),
            Line("rate changes at a stroke once in", c => Show.Hours(1000 / c.JumpsPer1000Hours)),
            Line("such a rise is by a factor of", c => Figure(Math.Exp(c.JumpUp))),
            Line("readings scatter, over the tool's, by a factor of", c => Figure(c.ScatterFactor)),
            Line("run-in", c => $"{Figure(c.RunInPercent)} %, most in {Show.Hours(c.RunInHours)}"),
            Line("wear never speeds up: probability", c => Percent(c.Onsets.Where(o => o.Percent is null).Sum(o => o.Weight))),
            Line("forecasts stretched: early and late side", c => $"{Figure(c.Spread.Early)} and {Figure(c.Spread.Late)}"),
        ],
        here.Curve is { } curve ? InWords(curve) : "No curve of its own yet: its shape of wear is assumed.");

        (string, string, string) Line(string what, Func<WearConstants, string> of) => (what, of(WearConstants.Default), of(here));
    }

    private static string InWords(WearCurve curve)
    {
        var (young, old) = (HoursAPercent(curve, 0.5, 1), HoursAPercent(curve, 1, 2));
        return string.Create(
            CultureInfo.InvariantCulture,
            $"A curve of its own from {curve.Chains} chains, believed at {100 * curve.Weight:0} %: from 1 to 2 % a chain takes "
            + $"{old / young:0.0} times the hours that it takes for as much from 0.5 to 1 %. "
            + $"Other shapes are weighed beside it.");
    }

    private static double HoursAPercent(WearCurve curve, double from, double to) =>
        (curve.FromElongation(to) - curve.FromElongation(from)) / (to - from);

    private static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.#} %");

    private static string Figure(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);
}
