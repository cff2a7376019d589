using WearWatch.Chains;
using WearWatch.Running;

namespace WearWatch.Storage.Rows;

/// <summary>A chain as the register has it.</summary>
public sealed class ChainRow
{
    public int Id { get; init; }

    /// <summary>The name on the label; unique in the plant.</summary>
    public required string Name { get; set; }

    public string Line { get; set; } = "";

    public string Position { get; set; } = "";

    public string ChainType { get; set; } = "";

    public ChainFamily Family { get; set; }

    public double PitchMm { get; set; }

    public int? Pitches { get; set; }

    /// <summary>Teeth of the sprockets.</summary>
    public IReadOnlyList<int> SprocketTeeth { get; set; } = [];

    public DateTimeOffset? FittedAt { get; set; }

    public double? FittedCounterH { get; set; }

    public double? LimitPct { get; set; }

    public double? LoadRel { get; set; }

    public double? SpeedMS { get; set; }

    public LubricationState? Lubrication { get; set; }

    public DustLevel? Dust { get; set; }

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
        LimitPercent = LimitPct,
        Duty = new Duty { RelativeLoad = LoadRel, SpeedMetresPerSecond = SpeedMS, Lubrication = Lubrication, Dust = Dust },
    };

    /// <summary>Takes over what a card says; the name stays.</summary>
    public void Take(ChainCard card)
    {
        (Line, Position, ChainType, Family) = (card.Line, card.Position, card.ChainType, card.Family);
        (PitchMm, Pitches, SprocketTeeth) = (card.PitchMm, card.Pitches, card.SprocketTeeth);
        (FittedAt, FittedCounterH, LimitPct) = (card.FittedAt, card.FittedCounter?.Hours, card.LimitPercent);
        (LoadRel, SpeedMS, Lubrication, Dust) =
            (card.Duty.RelativeLoad, card.Duty.SpeedMetresPerSecond, card.Duty.Lubrication, card.Duty.Dust);
    }
}
