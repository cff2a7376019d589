namespace WearWatch.Trends;

/// <summary>A tall matrix as an orthogonal one times an upper triangle, by Householder's reflections.</summary>
/// <remarks>Squaring the matrix, as the normal equations do, would square its condition too and lose twice the digits.</remarks>
internal sealed class HouseholderQr
{
    private readonly double[][] columns;
    private readonly double[] diagonal;

    /// <summary>Factors a matrix given by its columns, at least as long as they are many.</summary>
    public HouseholderQr(IReadOnlyList<double[]> matrix)
    {
        columns = [.. matrix.Select(c => (double[])c.Clone())];
        diagonal = new double[columns.Length];
        for (var k = 0; k < columns.Length; k++)
        {
            var v = columns[k];
            var norm = 0.0;
            for (var i = k; i < v.Length; i++) norm += v[i] * v[i];
            norm = Math.Sqrt(norm);
            if (norm == 0) continue;

            // The sign that adds, so that nothing cancels; v is scaled so that v'v = 2 v[k].
            diagonal[k] = v[k] > 0 ? -norm : norm;
            for (var i = k; i < v.Length; i++) v[i] /= -diagonal[k];
            v[k] += 1;
            for (var j = k + 1; j < columns.Length; j++) Reflect(v, k, columns[j]);
        }
    }

    /// <summary>The triangle's diagonal; an entry that is small beside its column's length says that the column adds nothing.</summary>
    public IReadOnlyList<double> Diagonal => diagonal;

    /// <summary>Q' v in place.</summary>
    public void ApplyTransposed(double[] v)
    {
        for (var k = 0; k < columns.Length; k++) Reflect(columns[k], k, v);
    }

    /// <summary>Q v in place.</summary>
    public void Apply(double[] v)
    {
        for (var k = columns.Length - 1; k >= 0; k--) Reflect(columns[k], k, v);
    }

    /// <summary>Solves R x = b; b as long as the matrix is wide.</summary>
    public double[] SolveUpper(ReadOnlySpan<double> b)
    {
        var x = b[..columns.Length].ToArray();
        for (var k = x.Length - 1; k >= 0; k--)
        {
            for (var j = k + 1; j < x.Length; j++) x[k] -= columns[j][k] * x[j];
            x[k] /= diagonal[k];
        }

        return x;
    }

    /// <summary>Solves R' x = b.</summary>
    public double[] SolveUpperTransposed(ReadOnlySpan<double> b)
    {
        var x = b[..columns.Length].ToArray();
        for (var k = 0; k < x.Length; k++)
        {
            for (var j = 0; j < k; j++) x[k] -= columns[k][j] * x[j];
            x[k] /= diagonal[k];
        }

        return x;
    }

    private static void Reflect(double[] v, int k, double[] target)
    {
        if (v[k] == 0) return;
        var projection = 0.0;
        for (var i = k; i < v.Length; i++) projection += v[i] * target[i];
        projection /= v[k];
        for (var i = k; i < v.Length; i++) target[i] -= projection * v[i];
    }
}
