using WearWatch.SensorSim.Passes;

namespace WearWatch.Benchmarks.Passes;

/// <summary>One kind of day at two sensors: 200 rigs of it are simulated.</summary>
/// <param name="Name">What is wrong, in the table.</param>
/// <param name="Bars">What is to come of it, and of which share of the days.</param>
internal sealed record PassScenario(string Name, params IReadOnlyList<(PassAsked Asked, double Share)> Bars)
{
    /// <summary>Whether a tape told the elongation within 0.08 % a week before.</summary>
    public bool Taped { get; init; } = true;

    /// <summary>Pitches between the sensors.</summary>
    public (double Fewest, double Most) Pitches { get; init; } = (30, 60);

    /// <summary>The chain's pitch in millimetres; by powers between the two.</summary>
    public (double Least, double Most) PitchMm { get; init; } = (25.4, 25.4);

    /// <summary>Teeth of the sprocket.</summary>
    public (int Fewest, int Most) Teeth { get; init; } = (11, 11);

    /// <summary>The day.</summary>
    public RigDay Day { get; init; } = new();

    /// <summary>The rig, of a sound one and chance.</summary>
    public Func<RigSetup, Random, RigSetup> Rig { get; init; } = (sound, _) => sound;

    /// <summary>What is wrong at a burst: of a run's own chance and the burst's number.</summary>
    public Func<Random, Func<int, RigFault>> Fault { get; init; } = _ => _ => default;
}
