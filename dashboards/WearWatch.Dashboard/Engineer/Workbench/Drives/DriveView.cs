using System.Globalization;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Drives;
using WearWatch.Plant.Bench;
using WearWatch.Units;

namespace WearWatch.Dashboard.Engineer.Workbench.Drives;

/// <summary>What the drive's page says, in a person's units.</summary>
public sealed record DriveView
{
    public required IReadOnlyList<DriveFact> Geometry { get; init; }

    public required IReadOnlyList<DriveFact> Load { get; init; }

    public required IReadOnlyList<DriveFact> Motion { get; init; }

    public required DriveFact Rating { get; init; }

    /// <summary>Whether the classic rating is enough; null when there is none.</summary>
    public required bool? Carries { get; init; }

    /// <summary>The power times the service factor.</summary>
    public required string Asked { get; init; }

    public required string ServiceFactor { get; init; }

    public required IReadOnlyList<RatedLine> Alternatives { get; init; }

    public required string Feed { get; init; }

    public required Sourced FeedSource { get; init; }

    /// <summary>Whether it is oiled as it has to be; null when not told.</summary>
    public required bool? OilIsEnough { get; init; }

    public required string Oil { get; init; }

    public required WearExpectation? Wear { get; init; }

    /// <summary>What of the chain type was recalled, not read; empty when nothing was.</summary>
    public required string FromMemory { get; init; }

    public static DriveView Of(DriveCalculation worked, UnitPreference units)
    {
        var (drive, figures, rating) = (worked.Drive, worked.Figures, worked.Rating);
        return new DriveView
        {
            Geometry =
            [
                new($"Length", $"{drive.Pitches:#,0} pitches, {units.OfLength(drive.Pitches * drive.PitchMm)}",
                    LengthNote(worked)),
                new($"Centre distance", $"{units.OfLength(figures.CentreDistanceMm)}",
                    $"{figures.CentreDistanceMm / drive.PitchMm:0.0} pitches"),
                new($"Pitch diameters",
                    $"{units.OfLength(figures.PitchDiameterMm)} and {units.OfLength(figures.DrivenPitchDiameterMm)}",
                    Phrase.None),
                new($"Ratio", $"{(double)drive.DrivenTeeth / drive.Teeth:0.###} to 1", Phrase.None),
                new($"Slack span to aim for", $"{units.OnRule(ChainLoop.SlackShare(false) * figures.CentreDistanceMm)}",
                    $"total movement in its middle; half of it where fast, jerky or upright"),
            ],
            Load =
            [
                new($"Pull", $"{units.OfForce(figures.Pull.Newtons)}",
                    $"{units.OfPower(drive.Power.Watts)} at {units.OfSpeed(figures.Speed.MetresPerSecond)}"),
                new($"Centrifugal pull", $"{units.OfForce(figures.CentrifugalPull?.Newtons)}", figures.CentrifugalPull is null
                    ? $"give the chain's mass a metre"
                    : Phrase.None),
                new($"Safety factor", $"{Text(figures.SafetyFactor, "0.0")}", figures.SafetyFactor is null
                    ? Phrase.Of($"tensile strength not known: an impossible power cannot be seen")
                    : figures.PullWarning.IsEmpty
                        ? $"tensile strength over the whole pull; 7 is usual, 6 the least"
                        : figures.PullWarning),
                new($"Relative load", worked.RelativeLoad.Share is { } share ? Phrase.Of($"{share:P0}") : $"not known",
                    worked.RelativeLoad.Basis),
                new($"Bearing pressure", $"{units.OfPressure(figures.BearingPressureNewtonsPerMm2)}",
                    figures.BearingPressureNewtonsPerMm2 is null ? $"bearing area not known" : Phrase.None),
            ],
            Motion =
            [
                new($"Chain speed", $"{units.OfSpeed(figures.Speed.MetresPerSecond)}",
                    $"{drive.Rpm:#,0.##} rpm; {LinkRate.LinksPerMinute(figures.Speed, drive.PitchMm):#,0} links a minute"),
                new($"Speed swings by", $"{figures.SpeedVariationPercent:0.0} %", $"the polygon of the smaller sprocket"),
                new($"Articulations", $"{figures.ArticulationsPerHour:#,0} an hour",
                    $"{figures.LoopsPerHour:#,0.#} rounds an hour"),
                new($"Loaded slip", figures.LoadedSlipMetresPerHour is null
                    ? Phrase.Verbatim(Show.Nothing)
                    : $"{units.OfWay(figures.LoadedSlipMetresPerHour)} an hour", $"of each pin in its bush"),
            ],
            Rating = new(
                $"Classic rating", rating.Rated is null ? $"none" : Phrase.Verbatim(units.OfPower(rating.Rated.Value.Watts)),
                rating is { StrandFactor: { } strands, Rated: not null }
                    ? $"{rating.Basis}; strand factor {strands:0.0}"
                    : rating.Basis),
            Carries = rating.IsEnough,
            Asked = units.OfPower(rating.Asked.Watts),
            ServiceFactor = Text(rating.ServiceFactor, "0.0"),
            Alternatives = [.. worked.Alternatives.Select(c => new RatedLine(
                c.Type.Designation, c.Rated, c.Speed, T[FeedWords(c.OilFeed)]))],
            Feed = worked.OilFeed is { } feed
                ? Show.Sentence($"{FeedWords(feed)}: by hand or drip up to {units.OfSpeed(feed.ManualUpTo.MetresPerSecond)}, "
                    + $"bath or disc up to {units.OfSpeed(feed.BathUpTo.MetresPerSecond)}, above it an oil stream.")
                : Show.Sentence($"{Lubrication.OilAmount.OfLifting.Text}"),
            FeedSource = worked.OilFeed is { } read
                ? new Sourced(0, read.Source, read.IsVerified)
                : new Sourced(0, Lubrication.OilAmount.OfLifting.Source, Lubrication.OilAmount.OfLifting.IsVerified),
            OilIsEnough = worked.OilIsEnough,
            Oil = OilWords(worked, units),
            Wear = WearExpectation.Of(worked),
            FromMemory = string.Join(", ", worked.FromMemory),
        };
    }

    private static Phrase LengthNote(DriveCalculation worked) => worked switch
    {
        { HasOddPitches: true } => $"an odd number needs an offset link, the weakest of the chain: take an even one",
        { ExactPitches: { } exact } => $"{exact:0.00} by the centre distance, rounded up to an even number",
        _ => Phrase.None,
    };

    private static string OilWords(DriveCalculation worked, UnitPreference units) => worked switch
    {
        { AmbientC: null } => T["Enter the temperature of the surroundings to see the viscosity grade."],
        { OilGrade: { } grade } => T[$"{grade.Sae}{(grade.IsoVg.Length > 0 ? ", ISO VG " + grade.IsoVg : "")} at "
            + $"{units.OfTemperature(worked.AmbientC)} ({Show.Source(grade.Source)})."] + " "
            + Show.Sentence($"{grade.Remark}"),
        _ => T[$"No table reaches {units.OfTemperature(worked.AmbientC)}: ask the maker of the oil."],
    };

    private static Phrase FeedWords(Lubrication.OilFeed feed) => feed.Kind switch
    {
        Lubrication.OilFeedKind.ManualOrDrip => $"by hand or drip",
        Lubrication.OilFeedKind.BathOrDisc => $"oil bath or disc",
        Lubrication.OilFeedKind.OilStream => $"oil stream",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string Text(double? value, string format) =>
        value?.ToString(format, CultureInfo.CurrentCulture) ?? Show.Nothing;
}

/// <summary>A figure with a word on it.</summary>
public sealed record DriveFact(Phrase Name, Phrase Value, Phrase Note);

/// <summary>A chain that carries the power by the classic rating.</summary>
public sealed record RatedLine(string ChainType, Power Rated, Speed Speed, string Feed);
