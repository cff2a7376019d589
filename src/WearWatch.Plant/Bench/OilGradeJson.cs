namespace WearWatch.Plant.Bench;

/// <summary>Which oil.</summary>
/// <param name="Sae">SAE grade of an engine oil.</param>
/// <param name="IsoVg">ISO viscosity grade.</param>
/// <param name="Source">Where that is from.</param>
/// <param name="Remark">What else to mind; empty for nothing.</param>
public sealed record OilGradeJson(string Sae, string IsoVg, string Source, Phrase Remark);
