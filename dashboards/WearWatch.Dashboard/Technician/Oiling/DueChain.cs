using WearWatch.Lubrication;

namespace WearWatch.Dashboard.Technician.Oiling;

/// <summary>A chain that is to be oiled, or whose oiler is to be looked at.</summary>
/// <param name="Id">Its row.</param>
/// <param name="Name">Its name.</param>
/// <param name="Line">Its line, or empty.</param>
/// <param name="Position">Where on the line, or empty.</param>
/// <param name="State">How soon.</param>
/// <param name="At">When it falls due.</param>
/// <param name="LooksAtOiler">Whether only its oiler is to be looked at.</param>
/// <param name="Grade">Which oil; empty where neither card nor tables tell.</param>
/// <param name="Advice">What the trade's tables say.</param>
/// <param name="Missed">Oilings that should have been done since the last one, but for the one that is due now.</param>
public sealed record DueChain(
    int Id, string Name, string Line, string Position, DueState State, DateTimeOffset At, bool LooksAtOiler, string Grade,
    OilAdvice Advice,
    int Missed)
{
    /// <summary>What is to be done, in few words.</summary>
    public string Task => LooksAtOiler ? "look at the oiler" : Grade.Length > 0 ? Grade : "oil not told";
}
