using WearWatch.Planning.Windows;

namespace WearWatch.Plant.Planning;

/// <summary>A planned shutdown of one line.</summary>
/// <param name="Id">What tells it from every other; a swap names it.</param>
/// <param name="Line">The line that stands still.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When the line starts again.</param>
/// <param name="Crew">Who works in it, or empty.</param>
/// <param name="CrewHours">The hours of work that the crew can give.</param>
public sealed record ShutdownJson(string Id, string Line, DateTimeOffset Start, DateTimeOffset End, string Crew, double CrewHours)
{
    /// <summary>A shutdown on the wire.</summary>
    public static ShutdownJson Of(ShutdownWindow window) =>
        new(window.Id, window.Line, window.Start, window.End, window.Crew, window.CrewHours);
}
