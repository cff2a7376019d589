using System.Text.Json;
using CsCheck;
using WearWatch.Gauging;
using WearWatch.Units;
using WearWatch.Wear;

namespace WearWatch.Tests.Wear;

/// <summary>What must hold for every chain, tried on many made up by chance.</summary>
public sealed class WearPropertyTests
{
    /// <summary>
    /// Hours between readings, their scatter about a line, in standard deviations, and now and then a gross error.
    /// </summary>
    private static readonly Gen<Observation[]> Tracks =
        Gen.Select(Gen.Double[0.02, 1.5], Gen.Double[0.01, 0.06],
            Gen.Select(Gen.Double[20, 900], Gen.Double[-2, 2], Gen.Int[0, 19]).Array[1, 25])
            .Select((rate, scatter, steps) =>
            {
                var hours = 0.0;
                return steps.Select((step, i) =>
                {
                    hours += step.Item1;
                    var slip = step.Item3 == 0 ? 1.2 : 0;
                    return new Observation(
                        hours, Math.Min(0.25 + rate * hours / 1000 + slip, 7.5) + scatter * step.Item2, scatter, i);
                }).ToArray();
            });

    [Fact]
    public void A_higher_limit_is_never_reached_sooner() =>
        Gen.Select(Tracks, Gen.Double[0.5, 5], Gen.Double[0.01, 1]).Sample((observations, limit, more) =>
        {
            var track = WearFilter.Default.Follow(WearPrior.Broad, observations);
            var (low, high) = (WearFilter.Default.Forecast(track, limit), WearFilter.Default.Forecast(track, limit + more));
            return low.ProbabilityPassed >= high.ProbabilityPassed
                && low.PercentilesHours.Zip(high.PercentilesHours).All(p => p.First <= p.Second);
        }, iter: 150);

    [Fact]
    public void Percentiles_ascend_and_probabilities_are_probabilities() =>
        Tracks.Sample(observations =>
        {
            var track = WearFilter.Default.Follow(WearPrior.Broad, observations);
            var view = WearNow.Of(track, WearFilter.Default);
            var forecast = WearFilter.Default.Forecast(track, 2);
            return forecast.PercentilesHours.Zip(forecast.PercentilesHours.Skip(1)).All(p => p.First <= p.Second && p.First >= 0)
                && view is { ProbabilityLastMisread: >= 0 and <= 1.0000001, ProbabilityRateRose: >= 0 and <= 1.0000001 }
                && double.IsFinite(view.LogRate) && view.ElongationDeviationPercent > 0;
        }, iter: 150);

    [Fact]
    public void A_track_that_is_stored_and_carried_on_is_the_recomputed_one_to_the_bit() =>
        Tracks.Sample(observations =>
        {
            var stored = WearTrack.AtFitting(WearPrior.Broad);
            foreach (var observation in observations)
            {
                stored = WearFilter.Default.Step(stored, observation);
                stored = JsonSerializer.Deserialize<WearTrack>(JsonSerializer.Serialize(stored))!;
            }

            return JsonSerializer.Serialize(stored)
                == JsonSerializer.Serialize(WearFilter.Default.Follow(WearPrior.Broad, observations));
        }, iter: 60);

    // The draws leave the quantiles uncertain by about 1 %, in rare cases 4 %.
    [Fact]
    public void A_reading_that_says_what_was_expected_does_not_widen_the_band() =>
        Gen.Select(Gen.Double[0.05, 0.6], Gen.Double[200, 900], Gen.Double[0.01, 0.05]).Sample((rate, gap, scatter) =>
        {
            var filter = WearFilter.Default;
            var chain = new FittedChain(true, 0, false, []);
            var width = double.PositiveInfinity;
            for (var i = 1; i <= 12 && rate * i * gap < 1300; i++)
            {
                var expected = i == 1 ? 0.25 + rate * gap / 1000 : filter.Expect(chain, WearPrior.Broad, i * gap).Percent;
                chain = chain with
                {
                    RunningHours = i * gap,
                    Observations = [.. chain.Observations, new(i * gap, expected, scatter, i - 1)],
                };
                var track = filter.Follow(chain, WearPrior.Broad);
                var forecast = filter.Forecast(track, 2);
                var now = forecast.LateHours!.Value - forecast.EarlyHours!.Value;
                if (now > 1.04 * width) return false;
                width = now;
            }

            return true;
        }, iter: 60);

    [Fact]
    public void Readings_with_dates_may_arrive_in_any_order() =>
        Gen.Shuffle(Enumerable.Range(0, 9).ToArray()).Sample(order =>
        {
            Reading[] taken = [.. Enumerable.Range(0, 9).Select(i =>
                A.Reading(i == 6 ? null : 300 + 400 * (i % 5), 0.3 + 0.1 * i, A.Monday.AddDays(17 * i)))];
            var (inOrder, shuffled) = (History(taken), History([.. order.Select(i => taken[i])]));

            return inOrder.Current.Observations.Select(o => o with { ReadingIndex = 0 })
                .SequenceEqual(shuffled.Current.Observations.Select(o => o with { ReadingIndex = 0 }));
        }, iter: 100);

    // Tolerance: a length in inches to the thirty-second part is exact in double, its 25.4-fold is rounded once.
    [Fact]
    public void The_unit_in_which_a_length_is_told_does_not_matter() =>
        Gen.Select(Gen.Int[0, 60], Gen.Int[1, 12]).Sample((thirtySeconds, pitches) =>
        {
            var inches = pitches * 2 + thirtySeconds / 32.0 * 0.01;
            Reading InMm(double mm, double counter) => A.Reading(counter, 0, pitches: 2 * pitches, lengthMm: mm);
            var told = Length.FromInches(inches).Millimetres;
            var (first, second) = (Forecast([InMm(told, 500), InMm(told * 1.001, 900)]),
                Forecast([InMm(inches * 25.4, 500), InMm(inches * 25.4 * 1.001, 900)]));
            return first.PercentilesHours.Zip(second.PercentilesHours).All(p => Math.Abs(p.First - p.Second) <= 1e-6 * p.Second);
        }, iter: 100);

    // Tolerance: the closed form knows one normal belief where the draws know several accounts and how they mix.
    [Fact]
    public void The_closed_form_gives_about_the_middle_of_the_draws() =>
        Tracks.Where(t => t.Length > 4).Sample(observations =>
        {
            var track = WearFilter.Default.Follow(WearPrior.Broad, observations);
            var (glance, drawn) = (WearFilter.Default.Glance(track, 3), WearFilter.Default.Forecast(track, 3));
            var view = WearNow.Of(track, WearFilter.Default);
            var isClear = drawn.ProbabilityPassed < 0.01
                && view is { ProbabilityLastMisread: < 0.05, ProbabilityRateRose: < 0.05, LogRateDeviation: < 0.5 };
            return !isClear || glance.MiddleHours / drawn.MiddleHours!.Value is > 0.75 and < 1.35;
        }, iter: 100);

    private static ChainHistory History(Reading[] readings) =>
        ChainHistory.Take(A.Card(), readings, [A.Reset(2000, 0, A.Monday.AddDays(17 * 5 - 3))]);

    private static WearForecast Forecast(Reading[] readings)
    {
        var chain = ChainHistory.Take(A.Card(), readings, []).Current;
        return WearFilter.Default.Forecast(WearFilter.Default.Follow(chain, WearPrior.Broad), 3);
    }
}
