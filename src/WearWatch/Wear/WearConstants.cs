namespace WearWatch.Wear;

/// <summary>
/// What is held to be the same for all chains of a plant: how wear wanders, jumps, speeds up, and how it is mismeasured.
/// </summary>
/// <remarks>
/// The defaults come from a study on simulated fleets (docs/method.md); self-calibration moves them towards a plant's own by
/// what its chains have shown. Elongation is in percent, hours are in thousands wherever a rate is meant.
/// </remarks>
public sealed record WearConstants
{
    /// <summary>The defaults, for a plant whose chains have shown nothing yet.</summary>
    public static WearConstants Default { get; } = new();

    /// <summary>q: variance that ln(wear rate) gains per 1,000 h; the rate's slow wandering.</summary>
    public double RateDrift { get; init; } = 0.004;

    /// <summary>eta: variance of the wear of 1,000 h relative to its square; uneven wear at an even rate.</summary>
    public double UnevenWear { get; init; } = 0.005;

    /// <summary>kappa: real scatter of a reading over the gauge's.</summary>
    public double ScatterFactor { get; init; } = 1.03;

    /// <summary>loc: scatter relative to the elongation, since wear differs along the chain.</summary>
    public double PlaceScatter { get; init; } = 0.01;

    /// <summary>A: elongation gained while a new chain runs in, in percent.</summary>
    public double RunInPercent { get; init; } = 0.2;

    /// <summary>s_A: standard deviation of <see cref="RunInPercent"/> from chain to chain, in percent.</summary>
    public double RunInDeviationPercent { get; init; } = 0.08;

    /// <summary>T_r: running hours in which all but 1/e of the run-in is done.</summary>
    public double RunInHours { get; init; } = 35;

    /// <summary>lambda: jumps of the wear rate per 1,000 h.</summary>
    public double JumpsPer1000Hours { get; init; } = 0.03;

    /// <summary>Share of the jumps that go up.</summary>
    public double ShareUp { get; init; } = 0.8;

    /// <summary>j: mean of ln(rate after / rate before) of a jump up.</summary>
    public double JumpUp { get; init; } = 0.9;

    /// <summary>Mean of ln(rate after / rate before) of a jump down.</summary>
    public double JumpDown { get; init; } = -0.675;

    /// <summary>s_j: standard deviation of ln(rate after / rate before) of a jump.</summary>
    public double JumpDeviation { get; init; } = 0.45;

    /// <summary>ln of the factor by which a jump that is yet to come raises the rate, in the forecast: 2.8.</summary>
    public double FutureJump { get; init; } = Math.Log(2.8);

    /// <summary>Standard deviation of <see cref="FutureJump"/>.</summary>
    public double FutureJumpDeviation { get; init; } = 0.25;

    /// <summary>
    /// p_o: share of gross errors among the readings: miscounted pitches, slips of the pen, a tape off the pin.
    /// </summary>
    public double MisreadShare { get; init; } = 0.03;

    /// <summary>s_o: standard deviation of a gross error, in percent.</summary>
    public double MisreadDeviationPercent { get; init; } = 0.8;

    /// <summary>
    /// gamma: how fast wear accelerates past its onset, per percent: the rate grows by <c>exp(gamma (e - e_c))</c>.
    /// </summary>
    public double Acceleration { get; init; } = 1.4;

    /// <summary>M: the most that acceleration multiplies the rate by; null where it goes on.</summary>
    public double? MostAcceleration { get; init; }

    /// <summary>The plant's own curve; null while its chains have not shown one.</summary>
    public WearCurve? Curve { get; init; }

    /// <summary>By how much the plant's chains differ from their priors.</summary>
    public PriorCorrection Prior { get; init; } = PriorCorrection.None;

    /// <summary>
    /// By how much forecasts are stretched so that they would have held for the chains that the constants are of.
    /// </summary>
    public ForecastSpread Spread { get; init; } = ForecastSpread.AsMade;

    /// <summary>K: how many hypotheses are kept.</summary>
    public int HypothesesKept { get; init; } = 12;

    /// <summary>e_c: where acceleration may begin, with the odds. In ascending order, "never" last.</summary>
    public IReadOnlyList<OnsetNode> Onsets { get; init; } =
        [new(2.15, 0.18), new(2.45, 0.18), new(2.75, 0.18), new(3.05, 0.18), new(3.35, 0.18), new(null, 0.10)];
}
