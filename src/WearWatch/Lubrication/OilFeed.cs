using System.Globalization;
using WearWatch.Chains;
using WearWatch.Units;

namespace WearWatch.Lubrication;

/// <summary>How a chain has to be oiled at its speed.</summary>
/// <param name="Kind">The least that will do.</param>
/// <param name="ManualUpTo">Up to this speed by hand or drip.</param>
/// <param name="BathUpTo">Up to this speed by bath or disc; above it by an oil stream.</param>
/// <param name="Source">Who says so.</param>
/// <param name="IsVerified">Whether its source was read.</param>
public sealed record OilFeed(OilFeedKind Kind, Speed ManualUpTo, Speed BathUpTo, string Source, bool IsVerified)
{
    // ASME number, type A and type B limits in ft/min, whether read [12] or recalled.
    private static readonly (int Number, double ManualFtMin, double BathFtMin, bool Read)[] BySize =
    [
        (25, 480, 3250, false), (35, 370, 2850, false), (40, 300, 2300, true), (50, 250, 2000, true), (60, 220, 1800, true),
        (80, 170, 1500, true), (100, 150, 1300, true), (120, 130, 1200, true), (140, 115, 1100, true), (160, 100, 1000, true),
        (180, 95, 935, false), (200, 85, 865, false), (240, 75, 790, false),
    ];

    /// <summary>The feed for a chain of the catalogue at a speed.</summary>
    /// <remarks>
    /// Sizes 40 to 160 by docs/references.md [12]; A-series and B-series chains of the same pitch count as these (common
    /// practice).
    /// Other pitches by power laws of the pitch, from memory of ISO 10823: 2.8 p^-0.56 m/s by hand, 7.0 by drip, 35 by bath.
    /// </remarks>
    public static OilFeed For(ChainType type, Speed speed)
    {
        var pitchMm = type.PitchMm?.Value ?? throw new ArgumentException("Choose the pitch first.", nameof(type));
        return For(pitchMm, speed);
    }

    /// <summary>The feed for a chain of a pitch at a speed.</summary>
    public static OilFeed For(double pitchMm, Speed speed)
    {
        foreach (var (number, manualFtMin, bathFtMin, read) in BySize)
        {
            if (Math.Abs(number / 10 * 25.4 / 8 - pitchMm) > 0.01) continue;
            var source = read ? "docs/references.md [12]" : Sourced.Memory;
            return Of(Speed.FromFeetPerMinute(manualFtMin), Speed.FromFeetPerMinute(bathFtMin), speed, source, read);
        }

        var byPitch = Math.Pow(pitchMm, -0.56);
        return Of(new Speed(7.0 * byPitch), new Speed(35 * byPitch), speed, Sourced.Memory, false);
    }

    /// <summary>Whether a way of lubrication suits: by hand does only up to its speed.</summary>
    /// <param name="fitted">How the chain is oiled.</param>
    public bool IsEnough(LubricationState fitted) =>
        fitted == LubricationState.Auto || Kind == OilFeedKind.ManualOrDrip && fitted == LubricationState.Manual;

    /// <summary>
    /// Whether a way of bringing the oil there does. A lubricator gives drops, so that it counts as a drip feed (common
    /// practice).
    /// </summary>
    public bool IsEnough(OilMethod fitted) => fitted switch
    {
        OilMethod.Stream => true,
        OilMethod.Bath => Kind != OilFeedKind.OilStream,
        _ => Kind == OilFeedKind.ManualOrDrip,
    };

    /// <summary>The feed in plain words.</summary>
    public string Text => string.Create(CultureInfo.InvariantCulture,
        $"{Words(Kind)} (by hand up to {ManualUpTo.MetresPerSecond:0.##} m/s, bath up to {BathUpTo.MetresPerSecond:0.##} m/s)");

    private static OilFeed Of(Speed manualUpTo, Speed bathUpTo, Speed speed, string source, bool read) => new(
        speed <= manualUpTo ? OilFeedKind.ManualOrDrip : speed <= bathUpTo ? OilFeedKind.BathOrDisc : OilFeedKind.OilStream,
        manualUpTo, bathUpTo, source, read);

    private static string Words(OilFeedKind kind) => kind switch
    {
        OilFeedKind.ManualOrDrip => "by hand or drip",
        OilFeedKind.BathOrDisc => "oil bath or disc",
        _ => "oil stream",
    };
}
