using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Phrases;
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
    /// <summary>Whether it may be oiled by hand at its speed; a drip feed may reach farther.</summary>
    public bool ByHand { get; private init; } = Kind == OilFeedKind.ManualOrDrip;

    /// <summary>Oiling conveyor chain by hand ends at this speed. Source: docs/references.md [49].</summary>
    private static Speed ConveyorByHandUpTo => new(0.5);

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
        return For(type.Family, pitchMm, speed);
    }

    /// <summary>The feed for a kind of chain: by the tables of roller drives where they are meant for it.</summary>
    /// <param name="family">The kind; a double-pitch chain has the joints of half its pitch.</param>
    /// <param name="pitchMm">Its pitch in millimetres.</param>
    /// <param name="speed">Its speed.</param>
    public static OilFeed For(ChainFamily family, double pitchMm, Speed speed)
    {
        if (family.OilTablePitchMm(pitchMm) is { } listed) return For(listed, speed);
        var byPitch = ByPitch(pitchMm, speed);
        return byPitch with { ByHand = speed <= ConveyorByHandUpTo };
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

        return ByPitch(pitchMm, speed);
    }

    private static OilFeed ByPitch(double pitchMm, Speed speed)
    {
        var byPitch = Math.Pow(pitchMm, -0.56);
        return Of(new Speed(7.0 * byPitch), new Speed(35 * byPitch), speed, Sourced.Memory, false) with
        {
            ByHand = speed <= new Speed(2.8 * byPitch),
        };
    }

    /// <summary>Whether a way of lubrication suits: by hand does only up to its speed.</summary>
    /// <param name="fitted">How the chain is oiled.</param>
    public bool IsEnough(LubricationState fitted) =>
        fitted == LubricationState.Auto || ByHand && fitted == LubricationState.Manual;

    /// <summary>
    /// Whether a way of bringing the oil there does. A lubricator gives drops, so that it counts as a drip feed (common
    /// practice).
    /// </summary>
    public bool IsEnough(OilMethod fitted) => fitted switch
    {
        OilMethod.Stream => true,
        OilMethod.Bath => Kind != OilFeedKind.OilStream,
        OilMethod.Hand => ByHand,
        _ => Kind == OilFeedKind.ManualOrDrip,
    };

    /// <summary>The feed in plain words.</summary>
    public Phrase Text => IsVerified
        ? Phrase.Of($"{Least} (by hand or drip up to {ManualUpTo.MetresPerSecond:0.##} m/s, bath up to "
            + $"{BathUpTo.MetresPerSecond:0.##} m/s)")
        : $"{Least} (by drip up to {ManualUpTo.MetresPerSecond:0.##} m/s, bath up to {BathUpTo.MetresPerSecond:0.##} m/s)";

    private Phrase Least => Kind == OilFeedKind.ManualOrDrip && !ByHand ? $"by drip" : Words(Kind);

    private static OilFeed Of(Speed manualUpTo, Speed bathUpTo, Speed speed, string source, bool read) => new(
        speed <= manualUpTo ? OilFeedKind.ManualOrDrip : speed <= bathUpTo ? OilFeedKind.BathOrDisc : OilFeedKind.OilStream,
        manualUpTo, bathUpTo, source, read);

    private static Phrase Words(OilFeedKind kind) => kind switch
    {
        OilFeedKind.ManualOrDrip => $"by hand or drip",
        OilFeedKind.BathOrDisc => $"oil bath or disc",
        _ => $"oil stream",
    };
}
