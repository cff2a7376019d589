using WearWatch.Wear;

namespace WearWatch.Dashboard.Engineer.Record;

/// <summary>What is assumed of how wear goes, and what the plant's chains have made of it.</summary>
/// <param name="Lines">What, as assumed without the plant's chains, as it is in use.</param>
/// <param name="Curve">The plant's own curve in a sentence.</param>
public sealed record TaughtWear(IReadOnlyList<(Phrase What, Phrase Assumed, Phrase Here)> Lines, Phrase Curve)
{
    /// <summary>What some constants say.</summary>
    public static TaughtWear Of(WearConstants here)
    {
        return new(
        [
            Line($"wear rate wanders in 1,000 h by", c => Percent(Math.Sqrt(c.RateDrift))),
            Line($"wear of 1,000 h is uneven by", c => Percent(Math.Sqrt(c.UnevenWear))),
            Line($"rate changes at a stroke once in", c => $"{1000 / c.JumpsPer1000Hours:#,0} h"),
            Line($"such a rise is by a factor of", c => Figure(Math.Exp(c.JumpUp))),
            Line($"readings scatter, over the tool's, by a factor of", c => Figure(c.ScatterFactor)),
            Line($"run-in", c => $"{c.RunInPercent:0.00} %, most in {c.RunInHours:#,0} h"),
            Line($"wear never speeds up: probability", c => Percent(c.Onsets.Where(o => o.Percent is null).Sum(o => o.Weight))),
            Line($"forecasts stretched: early and late side", c => $"{c.Spread.Early:0.00} and {c.Spread.Late:0.00}"),
        ],
        here.Curve is { } curve ? InWords(curve) : $"No curve of its own yet: its shape of wear is assumed.");

        (Phrase, Phrase, Phrase) Line(Phrase what, Func<WearConstants, Phrase> of) => (what, of(WearConstants.Default), of(here));
    }

    private static Phrase InWords(WearCurve curve)
    {
        var (young, old) = (HoursAPercent(curve, 0.5, 1), HoursAPercent(curve, 1, 2));
        return $"A curve of its own from {curve.Chains} chains, believed at {100 * curve.Weight:0} %: from 1 to 2 % a chain "
            + $"takes {old / young:0.0} times the hours that it takes for as much from 0.5 to 1 %. "
            + $"Other shapes are weighed beside it.";
    }

    private static double HoursAPercent(WearCurve curve, double from, double to) =>
        (curve.FromElongation(to) - curve.FromElongation(from)) / (to - from);

    private static Phrase Percent(double share) => $"{100 * share:0.#} %";

    private static Phrase Figure(double value) => $"{value:0.00}";
}
