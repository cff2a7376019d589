namespace WearWatch.Wear;

/// <summary>
/// One supposition of where accelerating wear begins: hardened layers worn through, sprockets hooked, pitch no longer shared.
/// </summary>
/// <param name="Percent">Elongation at which it begins, in percent; null when it never does.</param>
/// <param name="Weight">Probability of this supposition before anything is measured, 0 to 1.</param>
public sealed record OnsetNode(double? Percent, double Weight);
