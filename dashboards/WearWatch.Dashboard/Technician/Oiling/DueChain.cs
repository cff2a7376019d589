using WearWatch.Lubrication;

namespace WearWatch.Dashboard.Technician.Oiling;

/// <summary>A chain that is to be oiled, or whose oiler is to be looked at.</summary>
public sealed record DueChain
{
    /// <summary>Its row.</summary>
    public required int Id { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its line, or empty.</summary>
    public required string Line { get; init; }

    /// <summary>Where on the line, or empty.</summary>
    public required string Position { get; init; }

    /// <summary>How soon.</summary>
    public required DueState State { get; init; }

    /// <summary>When it falls due.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>Whether only its oiler is to be looked at.</summary>
    public required bool LooksAtOiler { get; init; }

    /// <summary>Which oil; empty where neither card nor tables tell.</summary>
    public required string Grade { get; init; }

    /// <summary>What the trade's tables say.</summary>
    public required OilAdvice Advice { get; init; }

    /// <summary>Oilings that should have been done since the last one, but for the one that is due now.</summary>
    public required int Missed { get; init; }

    /// <summary>What is to be done, in few words.</summary>
    public string Task => LooksAtOiler ? T["inspect the lubricator"] : Grade.Length > 0 ? Grade : T["lubricant not recorded"];
}
