using System.Collections.Concurrent;
using Microsoft.ML;

namespace WearWatch.Learning;

/// <summary>
/// Prediction engines for one caller each: an engine that two threads share answers wrongly, without an exception.
/// </summary>
internal sealed class EnginePool(MLContext ml, ITransformer pipeline, int width)
{
    private readonly ConcurrentBag<PredictionEngine<FleetExample, FleetRate>> idle = [];

    public double Predict(FleetExample row)
    {
        // An engine is lost rather than returned when it throws: what state it is in then nobody knows.
        var engine = idle.TryTake(out var pooled) ? pooled : Create();
        var rate = engine.Predict(row).LogRate;
        idle.Add(engine);
        return rate;
    }

    private PredictionEngine<FleetExample, FleetRate> Create() => ml.Model.CreatePredictionEngine<FleetExample, FleetRate>(
        pipeline, ignoreMissingColumns: false, inputSchemaDefinition: FleetPipeline.Schema(typeof(FleetExample), width));
}
