namespace WearWatch.Dashboard.Engineer.LifeData;

/// <summary>One group's stairs.</summary>
/// <param name="Name">The group.</param>
/// <param name="Line">Path of the curve.</param>
/// <param name="Band">Path of its band, or empty.</param>
/// <param name="Suspensions">Path of a mark for each suspension.</param>
/// <param name="Told">The curve in words.</param>
public sealed record SurvivalTrace(string Name, string Line, string Band, string Suspensions, string Told);
