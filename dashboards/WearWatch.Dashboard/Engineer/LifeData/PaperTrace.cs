using WearWatch.Lives;

namespace WearWatch.Dashboard.Engineer.LifeData;

/// <summary>One group on the paper.</summary>
/// <param name="Name">The group.</param>
/// <param name="Points">Its failures.</param>
/// <param name="Line">Path of the fitted law, or empty.</param>
/// <param name="Band">Path of its interval by likelihood, or empty.</param>
public sealed record PaperTrace(string Name, IReadOnlyList<PlottedLife> Points, string Line, string Band);
