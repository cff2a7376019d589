using WearWatch.Chains.Families;

namespace WearWatch.Chains;

/// <summary>A catalogue size of a chain. What is not known of it is null; every number carries its source.</summary>
/// <remarks>The numbers are facts that standards and makers publish; where they were read is said with each of them.</remarks>
public sealed record ChainType
{
    /// <summary>The designation by its standard, such as <c>16B-2</c> or <c>M112x160</c>.</summary>
    public required string Designation { get; init; }

    /// <summary>Other names of the very same chain.</summary>
    public IReadOnlyList<string> AlsoCalled { get; init; } = [];

    /// <summary>A chain of another standard that runs on the same sprockets, or empty.</summary>
    public string Counterpart { get; init; } = "";

    /// <summary>The standard that the designation belongs to, or <c>custom</c>.</summary>
    public required string Standard { get; init; }

    /// <summary>The kind of chain.</summary>
    public required ChainFamily Family { get; init; }

    /// <summary>Strands on common pins.</summary>
    public int Strands { get; init; } = 1;

    /// <summary>Pitch in millimetres; null while one of <see cref="PitchChoicesMm"/> has not been chosen.</summary>
    public Sourced? PitchMm { get; init; }

    /// <summary>The pitches in which it is made, where there is a choice.</summary>
    public IReadOnlyList<double> PitchChoicesMm { get; init; } = [];

    /// <summary>Largest roller diameter in millimetres; of a bush chain the diameter of the bush.</summary>
    public Sourced? RollerMm { get; init; }

    /// <summary>Diameter of the large carrying roller in millimetres, where there is such a variant.</summary>
    public Sourced? LargeRollerMm { get; init; }

    /// <summary>Outer diameter of the bush in millimetres.</summary>
    public Sourced? BushMm { get; init; }

    /// <summary>Smallest width between the inner plates in millimetres.</summary>
    public Sourced? InnerWidthMm { get; init; }

    /// <summary>Largest pin diameter in millimetres.</summary>
    public Sourced? PinMm { get; init; }

    /// <summary>Length of the bush, which is the width over the inner link, in millimetres.</summary>
    public Sourced? BushLengthMm { get; init; }

    /// <summary>Diameter of a round link's steel in millimetres.</summary>
    public Sourced? LinkDiameterMm { get; init; }

    /// <summary>Thickness of a plate in millimetres.</summary>
    public Sourced? PlateMm { get; init; }

    /// <summary>How the plates of a leaf chain are laced, such as <c>4x4</c>, or empty.</summary>
    public string Lacing { get; init; } = "";

    /// <summary>Distance between two strands in millimetres.</summary>
    public Sourced? RowSpacingMm { get; init; }

    /// <summary>Smallest tensile strength of all strands together in kilonewtons.</summary>
    public Sourced? TensileKilonewtons { get; init; }

    /// <summary>Load under which its length is measured, in newtons.</summary>
    public Sourced? MeasuringForceNewtons { get; init; }

    /// <summary>How much longer than nominal a new chain may be, in percent; none may be shorter.</summary>
    public Sourced? NewLengthTolerancePercent { get; init; }

    /// <summary>Bearing area of a joint over all strands in square millimetres: pin diameter times bush length.</summary>
    /// <remarks><c>A = d2 b2</c> for each strand. Leaf chains bear on plates, not on bushes, and have none here.</remarks>
    public Sourced? JointAreaMm2 => PinMm is { } pin && BushLengthMm is { } bush ? pin.Times(bush).Times(Strands) : null;

    /// <summary>This type in one of the pitches in which it is made.</summary>
    /// <param name="pitchMm">The pitch in millimetres, one of <see cref="PitchChoicesMm"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not made in this pitch.</exception>
    public ChainType WithPitch(double pitchMm) => PitchChoicesMm.Contains(pitchMm)
        ? this with
        {
            Designation = FormattableString.Invariant($"{Designation}x{pitchMm:0.###}"),
            PitchMm = Sourced.FromMemory(pitchMm),
            PitchChoicesMm = [],
        }
        : throw new ArgumentOutOfRangeException(nameof(pitchMm), pitchMm,
            $"{Designation} is made in pitches of {string.Join(", ", PitchChoicesMm)} mm.");

    /// <summary>A chain that no standard describes.</summary>
    /// <param name="designation">What the plant calls it.</param>
    /// <param name="family">The kind of chain that it comes nearest to.</param>
    /// <param name="pitchMm">Its pitch in millimetres, as the plant states it.</param>
    public static ChainType Custom(string designation, ChainFamily family, double pitchMm) => new()
    {
        Designation = designation,
        Standard = "custom",
        Family = family,
        PitchMm = new Sourced(pitchMm, "stated by the plant", IsVerified: true),
    };
}
