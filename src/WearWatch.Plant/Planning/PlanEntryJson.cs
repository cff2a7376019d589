namespace WearWatch.Plant.Planning;

/// <summary>
/// A plan to be kept, as a program tells it. A plan that was proposed or shown has its shape and can be told as it is.
/// </summary>
/// <param name="Revision">The state of the decisions from which it starts.</param>
/// <param name="Swaps">Where swaps stand; chains that are not named stay as they are.</param>
/// <param name="WhatIf">Under which circumstances it was proposed; it can be kept only when they were the real ones.</param>
/// <param name="By">Who decides so; empty for the one who tells it.</param>
public sealed record PlanEntryJson(
    int? Revision, IReadOnlyList<SwapEntryJson>? Swaps, WhatIfJson? WhatIf = null, string? By = null);
