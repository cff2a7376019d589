namespace WearWatch.Dashboard.Tests.People;

/// <summary>The true clock, moved on by the hand of a test.</summary>
internal sealed class MovedClock : TimeProvider
{
    private long ticks;

    public override DateTimeOffset GetUtcNow() => base.GetUtcNow().AddTicks(Interlocked.Read(ref ticks));

    public void MoveOn(TimeSpan by) => Interlocked.Add(ref ticks, by.Ticks);
}
