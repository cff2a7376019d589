using WearWatch.SensorSim.Randomness;

namespace WearWatch.SensorSim.Passes;

/// <summary>A shaft whose speed wanders slowly: <c>angle = w t + s w/f (cos(p) - cos(f t + p))</c>.</summary>
internal sealed class ShaftTurning
{
    private readonly double speed;
    private readonly double swing;
    private readonly double wander;
    private readonly double phase;

    public ShaftTurning(RigSetup setup, Chance chance)
    {
        // One pitch passes in the time of one tooth.
        speed = 2 * Math.PI / setup.Teeth * setup.SpeedMetresPerSecond * 1000 / setup.PitchMm;
        swing = setup.ShaftSwing;
        wander = 2 * Math.PI / chance.Between(3, 9);
        phase = chance.Between(0, 2 * Math.PI);
    }

    /// <summary>
    /// When the shaft has turned by an angle, in seconds (Newton's method; the swing is small, so it closes in at once).
    /// </summary>
    public double TimeAt(double angle)
    {
        var time = angle / speed;
        for (var i = 0; i < 6; i++) time -= (AngleAt(time) - angle) / (speed * (1 + swing * Math.Sin(wander * time + phase)));
        return time;
    }

    private double AngleAt(double time) =>
        speed * time + swing * speed / wander * (Math.Cos(phase) - Math.Cos(wander * time + phase));
}
