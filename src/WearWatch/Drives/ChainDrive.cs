using WearWatch.Units;

namespace WearWatch.Drives;

/// <summary>A drive of two sprockets and a chain, as it stands on a position's card.</summary>
public sealed record ChainDrive
{
    /// <summary>Pitch in millimetres.</summary>
    public required double PitchMm { get; init; }

    /// <summary>Teeth of the driving sprocket.</summary>
    public required int Teeth { get; init; }

    /// <summary>Teeth of the driven sprocket.</summary>
    public required int DrivenTeeth { get; init; }

    /// <summary>Turns a minute of the driving sprocket.</summary>
    public required double Rpm { get; init; }

    /// <summary>The power that it transmits.</summary>
    public required Power Power { get; init; }

    /// <summary>Length of the chain in pitches.</summary>
    public required int Pitches { get; init; }

    /// <summary>Idlers, tensioners and third shafts that the chain bends at besides.</summary>
    public int Idlers { get; init; }

    /// <summary>Strands on common pins.</summary>
    public int Strands { get; init; } = 1;

    /// <summary>Tensile strength of all strands together in kilonewtons; null when not known.</summary>
    public double? TensileKilonewtons { get; init; }

    /// <summary>Pin diameter in millimetres; null when not known.</summary>
    public double? PinMm { get; init; }

    /// <summary>Bearing area of a joint over all strands in square millimetres; null when not known.</summary>
    public double? JointAreaMm2 { get; init; }

    /// <summary>Mass of the chain in kilograms a metre; null when not known.</summary>
    public double? KilogramsPerMetre { get; init; }

    /// <summary>The figures of a catalogue type put into a drive.</summary>
    public ChainDrive With(Chains.ChainType type) => this with
    {
        PitchMm = type.PitchMm?.Value ?? PitchMm,
        Strands = type.Strands,
        TensileKilonewtons = type.TensileKilonewtons?.Value,
        PinMm = type.PinMm?.Value,
        JointAreaMm2 = type.JointAreaMm2?.Value,
    };
}
