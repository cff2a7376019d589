using System.Globalization;
using WearWatch.Chains;
using WearWatch.Drives;
using WearWatch.Units;

namespace WearWatch.Plant.Bench;

/// <summary>The classic rating of a drive, or why there is none.</summary>
/// <param name="Rated">What the chain may transmit, strand factor included; null when the formulas do not cover it.</param>
/// <param name="Asked">The drive's power times the service factor.</param>
/// <param name="ServiceFactor">By how much the power is raised for its unevenness.</param>
/// <param name="StrandFactor">What the strands carry as a multiple of one; null beyond the table.</param>
/// <param name="Basis">For which size it was worked out, or why not.</param>
public sealed record DriveRating(Power? Rated, Power Asked, double ServiceFactor, double? StrandFactor, Phrase Basis)
{
    private const int FewestTeeth = 9;

    /// <summary>Whether it carries what is asked; null when not known.</summary>
    public bool? IsEnough => Rated is { } rated ? rated.Watts >= Asked.Watts : null;

    /// <summary>The rating of a type in a drive: the small sprocket governs.</summary>
    internal static DriveRating Of(ChainType? type, ChainDrive drive, double serviceFactor)
    {
        var asked = new Power(drive.Power.Watts * serviceFactor);
        var (teeth, rpm) = SmallSprocket(drive);
        if (teeth < FewestTeeth) return new(null, asked, serviceFactor, null, $"The formulas begin at {FewestTeeth} teeth.");
        if (drive.Strands > RatingFactors.MostStrands)
            return new(null, asked, serviceFactor, null, $"The table of strands ends at {RatingFactors.MostStrands}.");
        if ((NumberOf(type) ?? BoundOf(type)) is not { } number)
            return new(null, asked, serviceFactor, RatingFactors.Strands(drive.Strands),
                $"The formulas are for the sizes of ASME B29.1 and their ISO 606 A counterparts only.");
        var size = Phrase.Counted(
            drive.Strands, $"No. {number}, {teeth} teeth, {rpm:0.##} rpm, {drive.Strands} strand",
            $"No. {number}, {teeth} teeth, {rpm:0.##} rpm, {drive.Strands} strands");
        // No formula for B chains has a source here: the A chain of the same pitch stands in, and it is said.
        var basis = NumberOf(type) is not null ? size : Phrase.Of(
            $"{size}: the A chain of the same pitch. No formula for the B series has a source here; take its maker's table");
        return new(ClassicRating.Of(number, teeth, rpm, drive.Strands), asked, serviceFactor,
            RatingFactors.Strands(drive.Strands), basis);
    }

    /// <summary>Other chains that carry the power on the same sprockets' teeth; empty where the formulas do not reach.</summary>
    internal static IReadOnlyList<SelectedChain> Alternatives(ChainDrive drive, double serviceFactor)
    {
        var (teeth, rpm) = SmallSprocket(drive);
        return teeth < FewestTeeth || drive.Power.Watts <= 0 ? [] : SelectedChain.For(drive.Power, teeth, rpm, serviceFactor);
    }

    private static (int Teeth, double Rpm) SmallSprocket(ChainDrive drive) => drive.Teeth <= drive.DrivenTeeth
        ? (drive.Teeth, drive.Rpm)
        : (drive.DrivenTeeth, drive.Rpm * drive.Teeth / drive.DrivenTeeth);

    /// <summary>The ASME number of the pitch of a B chain, whose own rating no source tells; null for any other.</summary>
    private static int? BoundOf(ChainType? type) =>
        type is { Standard: "ISO 606", Counterpart: "", PitchMm.Value: var pitchMm and >= 9.5 and <= 76.3 }
            && type.Designation.Contains('B', StringComparison.Ordinal)
            ? 10 * (int)Math.Round(pitchMm / 25.4 * 8)
            : null;

    /// <summary>The ASME number of a type or of its counterpart of the same dimensions.</summary>
    private static int? NumberOf(ChainType? type)
    {
        var name = type switch
        {
            { Standard: "ASME B29.1" } => type.Designation.Split('-')[0],
            { Standard: "ISO 606" } => type.Counterpart,
            _ => "",
        };
        return int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 25 and <= 240
            ? number
            : null;
    }
}
