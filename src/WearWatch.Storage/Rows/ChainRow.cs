using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Running;

namespace WearWatch.Storage.Rows;

/// <summary>A chain as the register has it.</summary>
public sealed partial class ChainRow
{
    public int Id { get; init; }

    /// <summary>The name on the label; unique in the plant.</summary>
    public required string Name { get; set; }

    public string Line { get; set; } = "";

    public string Position { get; set; } = "";

    public string ChainType { get; set; } = "";

    public ChainFamily Family { get; set; } = ChainFamily.Usual;

    public double PitchMm { get; set; }

    public int? Pitches { get; set; }

    /// <summary>Teeth of the sprockets.</summary>
    public IReadOnlyList<int> SprocketTeeth { get; set; } = [];

    public DateTimeOffset? FittedAt { get; set; }

    public double? FittedCounterH { get; set; }

    /// <summary>The supplier's lot of the first recorded chain.</summary>
    public string Lot { get; set; } = "";

    public double? LimitPct { get; set; }

    public double? LoadRel { get; set; }

    public double? SpeedMS { get; set; }

    public LubricationState? Lubrication { get; set; }

    public DustLevel? Dust { get; set; }

    public string LimitSetReason { get; set; } = "";

    public int Strands { get; set; } = 1;

    public bool FixedCentres { get; set; }

    public bool RunsInParallel { get; set; }

    public bool Timing { get; set; }

    public bool Positioning { get; set; }

    public bool HighPerformance { get; set; }

    public bool Lifts { get; set; }

    /// <summary>Why a chain of a kind that lifts by nature lifts nothing here, as a planner said; empty where not said.</summary>
    public string NotLiftingReason { get; set; } = "";

    public double? CentreDistanceMm { get; set; }

    public double? TakeUpTravelMm { get; set; }

    public double? GroupDifferenceMm { get; set; }

    public OilPlace OilPlace { get; set; }

    public ChainMaterial Material { get; set; }

    public string Attachments { get; set; } = "";

    public string StoreNumber { get; set; } = "";

    public string SprocketNumber { get; set; } = "";

    public double? AmbientC { get; set; }

    public OilMethod? OilMethod { get; set; }

    public string OilGrade { get; set; } = "";

    public double? OilingIntervalH { get; set; }

    public double OilingSurroundingsFactor { get; set; } = 1;

    /// <summary>Goes up with every change, so that a forecast made from an older entry is noticed.</summary>
    public int Revision { get; set; }

    /// <summary>Whether it lifts or holds a load, by its card or by its kind.</summary>
    public bool HoldsLoad => Family.Lifts(Lifts, NotLiftingReason.Length > 0);

    /// <summary>The chain as the domain knows it.</summary>
    public ChainCard ToCard() => new()
    {
        Name = Name,
        Line = Line,
        Position = Position,
        ChainType = ChainType,
        Family = Family,
        PitchMm = PitchMm,
        Pitches = Pitches,
        SprocketTeeth = SprocketTeeth,
        FittedAt = FittedAt,
        FittedCounter = FittedCounterH is { } h ? new RunningHours(h) : null,
        Lot = Lot,
        LimitPercent = LimitPct,
        LimitSetReason = LimitSetReason,
        Strands = Strands,
        FixedCentres = FixedCentres,
        RunsInParallel = RunsInParallel,
        Timing = Timing,
        Positioning = Positioning,
        HighPerformance = HighPerformance,
        Lifts = Lifts,
        NotLiftingReason = NotLiftingReason,
        LinkEntry = LinkEntry(),
        CentreDistanceMm = CentreDistanceMm,
        TakeUpTravelMm = TakeUpTravelMm,
        GroupDifferenceMm = GroupDifferenceMm,
        OilPlace = OilPlace,
        Material = Material,
        Kit = new SpareKit(Attachments, StoreNumber, SprocketNumber),
        OilingIntervalHours = OilingIntervalH,
        OilingSurroundingsFactor = OilingSurroundingsFactor,
        OilMethod = OilMethod,
        OilGrade = OilGrade,
        Duty = new Duty
        {
            RelativeLoad = LoadRel,
            SpeedMetresPerSecond = SpeedMS,
            Lubrication = Lubrication,
            Dust = Dust,
            AmbientC = AmbientC,
        },
    };

    /// <summary>Takes over what a card says; the name stays.</summary>
    public void Take(ChainCard card)
    {
        Revision++;
        (Line, Position, ChainType, Family) = (card.Line, card.Position, card.ChainType, card.Family);
        (PitchMm, Pitches, SprocketTeeth) = (card.PitchMm, card.Pitches, card.SprocketTeeth);
        (FittedAt, FittedCounterH, Lot, LimitPct) = (card.FittedAt, card.FittedCounter?.Hours, card.Lot, card.LimitPercent);
        (LimitSetReason, Strands, FixedCentres, RunsInParallel) =
            (card.LimitSetReason, card.Strands, card.FixedCentres, card.RunsInParallel);
        (Timing, Positioning, HighPerformance, Lifts) = (card.Timing, card.Positioning, card.HighPerformance, card.Lifts);
        NotLiftingReason = card.NotLiftingReason;
        Take(card.LinkEntry);
        (CentreDistanceMm, TakeUpTravelMm) = (card.CentreDistanceMm, card.TakeUpTravelMm);
        (GroupDifferenceMm, OilPlace, Material) = (card.GroupDifferenceMm, card.OilPlace, card.Material);
        (Attachments, StoreNumber, SprocketNumber) =
            (card.Kit.Attachments, card.Kit.StoreNumber, card.Kit.SprocketNumber);
        (OilMethod, OilGrade) = (card.OilMethod, card.OilGrade);
        (OilingIntervalH, OilingSurroundingsFactor) = (card.OilingIntervalHours, card.OilingSurroundingsFactor);
        (LoadRel, SpeedMS, Lubrication, Dust, AmbientC) = (
            card.Duty.RelativeLoad, card.Duty.SpeedMetresPerSecond, card.Duty.Lubrication, card.Duty.Dust, card.Duty.AmbientC);
    }
}
