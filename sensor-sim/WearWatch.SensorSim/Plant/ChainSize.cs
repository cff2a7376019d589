using System.Globalization;

namespace WearWatch.SensorSim.Plant;

/// <summary>A catalogue size of a standard.</summary>
/// <param name="Family">The kind of chain.</param>
/// <param name="Designation">As it stands in the standard, with the number of strands where the standard names it so.</param>
/// <param name="PitchMm">Nominal pitch in millimetres.</param>
internal sealed record ChainSize(MillFamily Family, string Designation, double PitchMm)
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>Whether a plant measures it with an inch tape: chains of American standards.</summary>
    public bool IsInchChain { get; private init; }

    /// <summary>A roller chain of ISO 606, such as <c>16B-2</c>: the number is the pitch in sixteenths of an inch.</summary>
    public static ChainSize Roller(string designation) =>
        new(MillFamily.Roller, designation, SixteenthsOfAnInch(designation[..2]));

    /// <summary>A roller chain of ASME B29.1, such as <c>80</c>: its tens are the pitch in eighths of an inch.</summary>
    public static ChainSize Ansi(string designation) =>
        new(MillFamily.Roller, designation, 2 * SixteenthsOfAnInch(designation[..^1])) { IsInchChain = true };

    /// <summary>A double-pitch chain of ISO 1275: <c>212A</c> is a 12A at twice its pitch.</summary>
    public static ChainSize DoublePitch(string designation) =>
        new(MillFamily.DoublePitch, designation, 2 * SixteenthsOfAnInch(designation[1..3]));

    /// <summary>A conveyor chain of ISO 1977, made in several pitches: <c>M112x160</c> is the one of 160 mm.</summary>
    public static ChainSize Conveyor(string designation, double pitchMm) =>
        new(MillFamily.Conveyor, string.Create(CultureInfo.InvariantCulture, $"{designation}x{pitchMm}"), pitchMm);

    /// <summary>A leaf chain of ISO 4347, such as <c>LL1644</c>: first come sixteenths of an inch of pitch.</summary>
    public static ChainSize Leaf(string designation) =>
        new(MillFamily.Leaf, designation, SixteenthsOfAnInch(designation[2..4]));

    /// <summary>A welded steel chain of ASME B29.200; its numbers do not tell the pitch.</summary>
    public static ChainSize Welded(string designation) => new(MillFamily.WeldedSteel, designation, designation switch
    {
        "WH78" => 66.27,
        "WH82" => 78.11,
        "WH106" or "WH110" => 152.4,
        "WH111" => 120.9,
        "WH124" => 101.6,
        "WH132" or "WH150" or "WH155" or "WH157" => 153.67,
        _ => throw new ArgumentOutOfRangeException(nameof(designation), designation, "No such welded steel chain."),
    })
    { IsInchChain = true };

    /// <summary>A round-steel link chain, named by wire and pitch as in <c>18x64</c>. Sizes of DIN 22252, from memory.</summary>
    public static ChainSize RoundLink(int wireMm, double pitchMm) =>
        new(MillFamily.RoundLink, string.Create(CultureInfo.InvariantCulture, $"{wireMm}x{pitchMm}"), pitchMm);

    private static double SixteenthsOfAnInch(string digits) =>
        int.Parse(digits, CultureInfo.InvariantCulture) * MillimetresPerInch / 16;
}
