using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Passes;

/// <summary>A shaft whose speed wanders slowly: <c>angle = w t + s w/f (cos(p) - cos(f t + p))</c>.</summary>
/// <remarks>
/// Run-out makes the sprocket take more chain along on one side than on the other: the chain is ahead of a true sprocket of that
/// angle by <c>r sin(angle + p)</c>, and of an oval one by half as much of twice the angle.
/// </remarks>
internal sealed class ShaftTurning
{
    private readonly double speed;
    private readonly double swing;
    private readonly double wander;
    private readonly double phase;
    private readonly (double Once, double Twice) runOut;
    private readonly (double Once, double Twice) runOutAt;

    public ShaftTurning(RigSetup setup, Chance chance)
    {
        // One pitch passes in the time of one tooth.
        speed = 2 * Math.PI / setup.Teeth * setup.SpeedMetresPerSecond * 1000 / setup.PitchMm;
        swing = setup.ShaftSwing;
        wander = 2 * Math.PI / chance.Between(setup.SwingSeconds.Least, setup.SwingSeconds.Most);
        phase = chance.Between(0, 2 * Math.PI);
        runOut = (setup.RunOut, setup.RunOutTwice / 2);
        var (least, most) = setup.SpeedShare;
        if (most > least) speed *= chance.Between(least, most);
        // Where the sprocket stands against the chain when the stretch begins; drawn only where it matters.
        if (runOut != (0, 0)) runOutAt = (chance.Between(0, 2 * Math.PI), chance.Between(0, 2 * Math.PI));
    }

    /// <summary>
    /// When the shaft has taken as much chain along as a true one by an angle, in seconds (Newton's method; the swing is small,
    /// so it closes in at once).
    /// </summary>
    public double TimeAt(double chainAngle)
    {
        var angle = TrueAngle(chainAngle);
        var time = angle / speed;
        for (var i = 0; i < 6; i++) time -= (AngleAt(time) - angle) / (speed * (1 + swing * Math.Sin(wander * time + phase)));
        return time;
    }

    /// <summary>By how far the shaft itself has turned (fixed-point iteration; run-out is some hundredths at most).</summary>
    private double TrueAngle(double chainAngle)
    {
        if (runOut == (0, 0)) return chainAngle;
        var angle = chainAngle;
        for (var i = 0; i < 6; i++) angle = chainAngle - Ahead(angle) + Ahead(0);
        return angle;
    }

    private double Ahead(double angle) =>
        runOut.Once * Math.Sin(angle + runOutAt.Once) + runOut.Twice * Math.Sin(2 * angle + runOutAt.Twice);

    private double AngleAt(double time) =>
        speed * time + swing * speed / wander * (Math.Cos(phase) - Math.Cos(wander * time + phase));
}
