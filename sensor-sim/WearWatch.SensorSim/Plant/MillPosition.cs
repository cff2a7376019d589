namespace WearWatch.SensorSim.Plant;

/// <summary>Where a chain runs, and what it has to stand there.</summary>
/// <param name="Label">What the people of the mill call it.</param>
/// <param name="Size">The chain that belongs there.</param>
/// <param name="Pitches">Length of the whole chain in pitches.</param>
/// <param name="Duty">What it has to stand.</param>
internal sealed record MillPosition(string Label, ChainSize Size, int Pitches, MillDuty Duty)
{
    /// <summary>The chain's name in all files: the line's letters and a number, such as <c>DB-07</c>.</summary>
    public string ChainName { get; init; } = "";

    /// <summary>The limit that the mill set itself, in percent; null leaves it to the rule for the kind of chain.</summary>
    public double? OwnLimitPercent { get; init; }

    /// <summary>Temperature of the chain when it is measured, in degrees Celsius.</summary>
    public double TemperatureC { get; init; } = 20;

    /// <summary>Whether sensors measure the running chain.</summary>
    public bool HasSensors { get; init; }

    /// <summary>The elongation at which this chain is to be replaced, in percent.</summary>
    /// <remarks>By kind: roller chain 3 %, double pitch 1.5 %, conveyor and leaf chain 2 % (docs/references.md [8], [31], [11],
    /// [30]); welded steel and round link 2.5 %, common practice.</remarks>
    public double LimitPercent => OwnLimitPercent ?? Size.Family switch
    {
        MillFamily.Roller => 3.0,
        MillFamily.DoublePitch => 1.5,
        MillFamily.Conveyor or MillFamily.Leaf => 2.0,
        _ => 2.5,
    };

    /// <summary>
    /// The mill's own interval between two oilings, or two looks at an oiler, in running hours; null where it has none.
    /// </summary>
    /// <remarks>
    /// The mill oils once a week and looks at its oilers once a month: a rule of its own, rarer than the handbook's.
    /// </remarks>
    public double? OilingIntervalHours => Duty.Lubrication switch
    {
        Lubrication.Auto => 750,
        Lubrication.Manual or Lubrication.Poor => 180,
        _ => null,
    };

    /// <summary>The mill has two oils: a thick one where the chain gets warm, a common one elsewhere.</summary>
    public string OilGrade => TemperatureC >= 40 ? "ISO VG 220" : "ISO VG 100";

    /// <summary>
    /// What an oiling by hand takes, in millilitres: more for longer chains and wider joints. Common practice, a rough figure.
    /// </summary>
    public double OilAmountMl => Math.Round(0.006 * Pitches * Size.PitchMm);

    /// <summary>What stands in the files: the limit is left out where the general rule of roller chains says the same.</summary>
    public double? ToldLimitPercent => OwnLimitPercent is null && Size.Family == MillFamily.Roller ? null : LimitPercent;
}
