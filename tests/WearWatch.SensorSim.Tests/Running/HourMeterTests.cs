using WearWatch.SensorSim.Running;

namespace WearWatch.SensorSim.Tests.Running;

public sealed class HourMeterTests
{
    [Fact]
    public void A_counter_of_whole_hours_moves_on_when_the_hour_is_full()
    {
        var meter = new HourMeter(StartHour: 100, StartCount: 5_000, Decimals: 0, Reset: null);

        Assert.Equal(5_000, meter.CountAt(100));
        Assert.Equal(5_000, meter.CountAt(100.99));
        Assert.Equal(5_001, meter.CountAt(101));
    }

    [Fact]
    public void A_counter_of_tenths_shows_tenths() =>
        Assert.Equal(0.7, new HourMeter(0, 0, 1, null).CountAt(0.79), 1e-12);

    [Fact]
    public void An_exchanged_counter_begins_at_zero()
    {
        var meter = new HourMeter(0, 900, 0, new MeterReset(50, Recorded: true));

        Assert.Equal(949, meter.CountAt(49.9));
        Assert.Equal(950, meter.CountBeforeReset);
        Assert.Equal(0, meter.CountAt(50));
        Assert.Equal(12, meter.CountAt(62.5));
    }
}
