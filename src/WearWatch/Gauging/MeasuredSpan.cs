using WearWatch.Chains.Families;

namespace WearWatch.Gauging;

/// <summary>All that is known of one measurement of a length over pitches.</summary>
public sealed record MeasuredSpan
{
    /// <summary>Nominal pitch in millimetres.</summary>
    public required double PitchMm { get; init; }

    /// <summary>Number of pitches in the length.</summary>
    public required int Pitches { get; init; }

    /// <summary>
    /// The length in millimetres, from pin centre to pin centre, as often as it was measured; their mean counts.
    /// </summary>
    public required IReadOnlyList<double> LengthsMm { get; init; }

    /// <summary>With what it was measured.</summary>
    public Instrument Instrument { get; init; } = new Instrument.Tape();

    /// <summary>The kind of chain. Of links that are all alike any number may be measured.</summary>
    public ChainFamily Family { get; init; } = ChainFamily.Usual;

    /// <summary>With which link the length begins.</summary>
    public FirstLink FirstLink { get; init; }

    /// <summary>
    /// Temperature of the chain in degrees Celsius; null when it was not told: then chain and tool are taken as equally warm.
    /// </summary>
    public double? ChainTemperatureC { get; init; }

    /// <summary>Temperature of the tool in degrees Celsius; null for 20.</summary>
    public double? ToolTemperatureC { get; init; }

    /// <summary>How much longer than nominal a new chain of this type may be, in percent; null leaves it to its kind.</summary>
    public double? ListedTolerancePercent { get; init; }

    /// <summary>How much longer than nominal it may have been when new, in percent.</summary>
    public double NewLengthTolerancePercent => ListedTolerancePercent ?? Family.NewLengthTolerancePercent.Value;

    /// <summary>The measured length when new; null measures against nominal.</summary>
    public NewLength? New { get; init; }

    /// <summary>How the chain was held meanwhile.</summary>
    public Held Held { get; init; }

    /// <summary>Mean of the measured lengths in millimetres.</summary>
    public double LengthMm => LengthsMm.Average();

    /// <summary>Nominal length in millimetres: <c>N p</c>.</summary>
    public double NominalMm => Pitches * PitchMm;

    /// <summary>Whether inner and outer links alternate, so that only every other pitch grows.</summary>
    public bool LinksAlternate => Family.LinksAlternate;

    /// <summary>
    /// What a reading over an odd number of pitches shows of the true elongation: <c>1 - 1/N</c> or <c>1 + 1/N</c>.
    /// </summary>
    /// <remarks>
    /// Only every other link grows, by the wear of two joints. A length that begins and ends with an outer link holds one
    /// growing link too few. Geometry; see docs/gauging.md.
    /// </remarks>
    public double OddShare => !LinksAlternate || int.IsEvenInteger(Pitches) ? 1 : FirstLink switch
    {
        FirstLink.Outer => 1 - 1.0 / Pitches,
        FirstLink.Inner => 1 + 1.0 / Pitches,
        _ => 1,
    };

    /// <summary>The length from centre to centre of two end rollers, from their inside and their outside.</summary>
    /// <remarks><c>L = (L1 + L2)/2</c>: roller diameter and play cancel. Source: docs/references.md [4].</remarks>
    /// <param name="insideMm">Between the inner sides of the two rollers, in millimetres.</param>
    /// <param name="outsideMm">Over the outer sides of the same rollers, in millimetres.</param>
    public static double OverRollersMm(double insideMm, double outsideMm) => (insideMm + outsideMm) / 2;
}
