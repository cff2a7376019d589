using Microsoft.ML;
using Microsoft.ML.Data;
using WearWatch.Trends;

namespace WearWatch.Learning.Tests;

/// <summary>Oracle of all of these: the direct fit, itself checked against NIST's certified values; compared bit for bit.</summary>
public sealed class TrendEstimatorTests
{
    private static readonly double[] AskedHours = [0, 1e-3, 512.25, 4_000, 20_000.125, 1e6];
    private readonly MLContext ml = FleetTrendEstimator.Context(seed: 1);

    [Fact]
    public void The_pipeline_gives_the_bits_of_the_direct_fit()
    {
        foreach (var chain in SimulatedFleet.Chains.Take(40))
        {
            var rows = RowsOf(chain);
            if (Line(rows) is not { } line) continue;
            AssertSame(line, Ask(new ExactTrendEstimator(ml).Fit(View(rows)), ml));
        }
    }

    [Fact]
    public void The_bits_survive_saving_and_loading()
    {
        var rows = RowsOf(SimulatedFleet.Chains[5]);
        using var file = new MemoryStream();
        ml.Model.Save(new ExactTrendEstimator(ml).Fit(View(rows)), View(rows).Schema, file);
        file.Position = 0;
        var elsewhere = new MLContext(seed: 2);
        AssertSame(Line(rows)!, Ask(elsewhere.Model.Load(file, out _), elsewhere));
    }

    [Fact]
    public void It_is_a_step_that_others_may_follow()
    {
        var rows = RowsOf(SimulatedFleet.Chains[5]);
        var pipeline = new EstimatorChain<ITransformer>().Append<ITransformer>(new ExactTrendEstimator(ml))
            .Append(ml.Transforms.Expression("Left", "(t) : 3d - t", nameof(TrendPoint.TrendPercent)));
        var left = pipeline.Fit(View(rows)).Transform(View(rows)).Schema["Left"];
        Assert.Equal(typeof(double), left.Type.RawType);
    }

    [Fact]
    public void Two_readings_give_a_line_without_an_error()
    {
        TrendObservation[] rows = [new() { Hours = 0 }, new() { Hours = 1000, ElongationPercent = 0.5 }];
        var point = Ask(new ExactTrendEstimator(ml).Fit(View(rows)), ml)(2000);
        Assert.Equal(1.0, point.TrendPercent);
        Assert.True(double.IsNaN(point.TrendStandardErrorPercent));
    }

    [Fact]
    public void Rows_that_determine_no_line_are_refused_in_words()
    {
        var oneHour = new[] { new TrendObservation { Hours = 5 }, new TrendObservation { Hours = 5 } };
        Assert.Contains("two places", Assert.Throws<InvalidOperationException>(() => new ExactTrendEstimator(ml).Fit(View(oneHour))).Message);
    }

    [Fact]
    public void One_model_holds_the_lines_of_a_whole_fleet_to_the_bit_and_survives_saving()
    {
        TrendObservation[] rows = [.. SimulatedFleet.Chains.SelectMany(RowsOf)];
        using var file = new MemoryStream();
        ml.Model.Save(new FleetTrendEstimator(ml).Fit(View(rows)), View(rows).Schema, file);
        file.Position = 0;
        var elsewhere = FleetTrendEstimator.Context(seed: 2);
        using var engine = elsewhere.Model.CreatePredictionEngine<TrendObservation, TrendPoint>(elsewhere.Model.Load(file, out _));
        foreach (var chain in rows.GroupBy(r => r.Chain))
        {
            if (Line([.. chain]) is { } line) AssertSame(line, hours => engine.Predict(new TrendObservation { Chain = chain.Key, Hours = hours }));
        }
    }

    [Fact]
    public void A_chain_without_a_line_is_answered_with_not_a_number()
    {
        TrendObservation[] rows = [new() { Chain = "one reading", Hours = 5 }, .. RowsOf(SimulatedFleet.Chains[5])];
        using var engine = ml.Model.CreatePredictionEngine<TrendObservation, TrendPoint>(new FleetTrendEstimator(ml).Fit(View(rows)));
        Assert.True(double.IsNaN(engine.Predict(new TrendObservation { Chain = "one reading" }).TrendPercent));
        Assert.True(double.IsNaN(engine.Predict(new TrendObservation { Chain = "never seen" }).TrendPercent));
    }

    private static TrendObservation[] RowsOf(FleetChain chain) =>
    [
        .. chain.Observations.Select(o => new TrendObservation
        {
            Chain = chain.Card.Name,
            Hours = o.HoursSinceFitting,
            ElongationPercent = o.ElongationPercent,
            Weight = 1 / (o.ScatterPercent * o.ScatterPercent),
        })
    ];

    private static StraightLine? Line(TrendObservation[] rows) =>
        StraightLine.Fit([.. rows.Select(r => r.Hours)], [.. rows.Select(r => r.ElongationPercent)], [.. rows.Select(r => r.Weight)])
            is TrendFit<StraightLine>.Fitted { Trend: var line } ? line : null;

    private static Func<double, TrendPoint> Ask(ITransformer model, MLContext context)
    {
        var engine = context.Model.CreatePredictionEngine<TrendObservation, TrendPoint>(model);
        return hours => engine.Predict(new TrendObservation { Hours = hours });
    }

    private static void AssertSame(StraightLine line, Func<double, TrendPoint> ask)
    {
        foreach (var hours in AskedHours)
        {
            var point = ask(hours);
            Assert.Equal(BitConverter.DoubleToInt64Bits(line.At(hours)), BitConverter.DoubleToInt64Bits(point.TrendPercent));
            Assert.Equal(
                BitConverter.DoubleToInt64Bits(line.StandardErrorAt(hours)), BitConverter.DoubleToInt64Bits(point.TrendStandardErrorPercent));
        }
    }

    private IDataView View(TrendObservation[] rows) => ml.Data.LoadFromEnumerable(rows);
}
