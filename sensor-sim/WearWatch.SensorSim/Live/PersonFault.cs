using System.Globalization;
using WearWatch.SensorSim.Measuring;

namespace WearWatch.SensorSim.Live;

/// <summary>A fault on command that is a person's slip, in the hour counter or in a length. This is the truth of it.</summary>
internal static class PersonFault
{
    private const int Pitches = 16;
    private const int FewestDigits = 3;

    /// <summary>What the counter was set to instead of what it ought to show; null for no such fault.</summary>
    public static double? CounterSetTo(LiveFault fault, double rightH)
    {
        CounterSlip? slip = fault switch
        {
            LiveFault.CounterDigitsSwapped => CounterSlip.SwappedDigits,
            LiveFault.CounterDigitMissing => CounterSlip.MissingDigit,
            LiveFault.CounterDigitTwice => CounterSlip.RepeatedDigit,
            LiveFault.CounterTenthsAsHours => CounterSlip.TenthsAsHours,
            _ => null,
        };
        var digits = Math.Floor(rightH).ToString(CultureInfo.InvariantCulture).Length;
        return slip is not { } how || digits < FewestDigits ? null
            : Enumerable.Range(1, digits - 1).Select(at => ReadCounter.With(rightH, how, at, tenths: 5))
                .FirstOrDefault(read => read.Slip == how, new ReadCounter(rightH, how)).Hours;
    }

    /// <summary>The length that is sent, as told: over how many pitches, and how long; null for no such fault.</summary>
    public static (int Pitches, string Mm)? Length(LiveFault fault, double pitchMm, double elongationPercent)
    {
        var told = LengthSlip(fault);
        var over = Pitches + told switch { Slip.OnePitchTooMany => 1, Slip.OnePitchTooFew => -1, _ => 0 };
        return told == Slip.None ? null
            : (Pitches, EnteredLength.Of(over * pitchMm * (1 + elongationPercent / 100), Tool.Caliper, inInches: false)
                .With(told).Told.Text);
    }

    private static Slip LengthSlip(LiveFault fault) => fault switch
    {
        LiveFault.LengthOnePitchMore => Slip.OnePitchTooMany,
        LiveFault.LengthOnePitchFewer => Slip.OnePitchTooFew,
        LiveFault.LengthPointSlipped => Slip.DecimalSlip,
        LiveFault.LengthDigitsSwapped => Slip.SwappedDigits,
        _ => Slip.None,
    };
}
