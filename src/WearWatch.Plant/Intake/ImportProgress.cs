namespace WearWatch.Plant.Intake;

/// <summary>How far an import has come.</summary>
/// <param name="File">The file that is read now.</param>
/// <param name="Rows">Rows of it that have been read.</param>
/// <param name="Share">Share of its bytes that have been read, 0 to 1.</param>
public sealed record ImportProgress(string File, int Rows, double Share);
