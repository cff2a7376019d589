namespace WearWatch.Storage.Engines;

/// <summary>A newer program wrote the plant's memory; this one would misread it.</summary>
/// <param name="step">The first step of the layout that is not known here.</param>
public sealed class NewerLayoutException(string step)
    : Exception($"The plant's memory has a newer layout ({step}) than this program knows.");
