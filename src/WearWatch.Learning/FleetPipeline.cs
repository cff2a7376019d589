using System.Runtime.InteropServices;
using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Trainers.FastTree;

namespace WearWatch.Learning;

/// <summary>
/// The fleet model as an ML.NET pipeline: the log-linear step, and where it wins a small boosted tree ensemble on what that
/// leaves.
/// </summary>
internal static class FleetPipeline
{
    /// <summary>Whether trees can be grown on this processor: their native library ships for x64 and x86 only.</summary>
    /// <remarks>
    /// Elsewhere, as on an arm64 box in a control cabinet, the log-linear part serves alone, and the report says so.
    /// </remarks>
    public static bool CanGrowTrees => RuntimeInformation.ProcessArchitecture is Architecture.X64 or Architecture.X86;

    /// <summary>A context that loads our step. One for each model: contexts share nothing.</summary>
    public static MLContext Context(int seed)
    {
        var ml = new MLContext(seed);
        ml.ComponentCatalog.RegisterAssembly(typeof(LogLinearStep).Assembly);
        return ml;
    }

    /// <summary>Builds the pipeline of a log-linear part, with or without trees.</summary>
    public static ITransformer Build(MLContext ml, LogLinearRate line, ITransformer? trees)
    {
        var empty = Rows(ml, line.Design.Width, []);
        KeyValuePair<string, double[]>[] coefficients = [new(FleetExample.LogLinear, [.. line.Coefficients])];
        var step = ml.Transforms.Conversion.MapValue<string, double>("Coefficients", coefficients, nameof(FleetExample.Part))
            .Append(ml.Transforms
                .CustomMapping<LogLinearStepInput, LogLinearStepOutput>(LogLinearStep.Map, LogLinearStep.Contract))
            .Fit(empty);
        if (trees is null)
            return step.Append(ml.Transforms.CopyColumns(nameof(FleetRate.LogRate), "LineLogRate").Fit(step.Transform(empty)));

        var both = step.Append(trees);
        return both.Append(ml.Transforms.Expression(nameof(FleetRate.LogRate), "(l, r) : l + double(r)", "LineLogRate", "Score")
            .Fit(both.Transform(empty)));
    }

    /// <summary>Boosts trees on what the log-linear part leaves.</summary>
    /// <remarks>
    /// Four leaves show interactions of two or three inputs; 30 chains in a leaf keep single chains from being learned by heart.
    /// </remarks>
    public static ITransformer FitTrees(MLContext ml, LogLinearRate line, IReadOnlyList<RateSample> samples, int seed)
    {
        var rows = samples.Select(s => new ResidualExample
        {
            Row = line.Design.Row(s.Card),
            Residual = (float)(s.LogRate - line.Expect(s.Card)),
            Weight = (float)(line.TauSquared / (line.TauSquared + s.StandardError * s.StandardError)),
        });
        var trees = new FastTreeRegressionTrainer.Options
        {
            LabelColumnName = nameof(ResidualExample.Residual),
            ExampleWeightColumnName = nameof(ResidualExample.Weight),
            FeatureColumnName = "Features",
            NumberOfLeaves = 4,
            NumberOfTrees = 100,
            LearningRate = 0.05,
            MinimumExampleCountPerLeaf = 30,
            NumberOfThreads = 1,
            Seed = seed,
        };
        return ml.Transforms.Conversion.ConvertType("Features", nameof(FleetExample.Row), DataKind.Single)
            .Append(ml.Regression.Trainers.FastTree(trees))
            .Fit(ml.Data.LoadFromEnumerable(rows, Schema(typeof(ResidualExample), line.Design.Width)));
    }

    /// <summary>Rows as the pipeline reads them.</summary>
    public static IDataView Rows(MLContext ml, int width, IEnumerable<FleetExample> rows) =>
        ml.Data.LoadFromEnumerable(rows, Schema(typeof(FleetExample), width));

    /// <summary>The columns of a row whose width the fleet gives.</summary>
    public static SchemaDefinition Schema(Type row, int width)
    {
        var schema = SchemaDefinition.Create(row);
        schema[nameof(FleetExample.Row)].ColumnType = new VectorDataViewType(NumberDataViewType.Double, width);
        return schema;
    }
}
