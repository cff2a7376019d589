using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Trainers.FastTree;

namespace WearWatch.Learning;

/// <summary>The name of a model by its content.</summary>
/// <remarks>
/// The bytes of a saved pipeline will not do: the archive has times in it. So the statistics are taken as text, and the trees
/// leaf by leaf.
/// </remarks>
internal static class FleetVersion
{
    private const int HexDigits = 12;

    public static string Of(FleetStatistics statistics, ITransformer pipeline)
    {
        var content = new StringBuilder(JsonSerializer.Serialize(statistics, FleetJson.Default.FleetStatistics));
        foreach (var trees in Trees(pipeline)) Describe(trees, content);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content.ToString())))[..HexDigits];
    }

    private static IEnumerable<RegressionTreeEnsemble> Trees(ITransformer pipeline) => pipeline switch
    {
        IEnumerable<ITransformer> chain => chain.SelectMany(Trees),
        ISingleFeaturePredictionTransformer<FastTreeRegressionModelParameters> trees => [trees.Model.TrainedTreeEnsemble],
        _ => [],
    };

    private static void Describe(RegressionTreeEnsemble ensemble, StringBuilder content)
    {
        content.Append(CultureInfo.InvariantCulture, $"|{ensemble.Bias:R}");
        foreach (var (tree, weight) in ensemble.Trees.Zip(ensemble.TreeWeights))
        {
            content.Append(CultureInfo.InvariantCulture, $"|{weight:R}:");
            content.AppendJoin(',', tree.NumericalSplitFeatureIndexes).Append(';');
            content.AppendJoin(',', tree.NumericalSplitThresholds.Select(t => t.ToString("R", CultureInfo.InvariantCulture)))
                .Append(';');
            content.AppendJoin(',', tree.LeftChild).Append(';').AppendJoin(',', tree.RightChild).Append(';');
            content.AppendJoin(',', tree.LeafValues.Select(v => v.ToString("R", CultureInfo.InvariantCulture)));
        }
    }
}
