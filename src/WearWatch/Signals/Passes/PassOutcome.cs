using WearWatch.Phrases;

namespace WearWatch.Signals.Passes;

/// <summary>Why a day of passes is not believed.</summary>
public enum PassDoubt
{
    /// <summary>Too few bursts could be used.</summary>
    TooLittle,

    /// <summary>Too many pulses were missed or came double.</summary>
    BadSignal,

    /// <summary>The sensors' distance seems to have changed, within the day or since the last reading.</summary>
    SensorMoved,

    /// <summary>The number of pitches between the sensors is not certain.</summary>
    WrongCount,

    /// <summary>The second sensor sees the pattern of the joints first: swapped wires, or a chain that runs backwards.</summary>
    Backwards,

    /// <summary>The sensors do not see each roller once: each second one, or each pitch twice.</summary>
    WrongRollers,
}

/// <summary>What became of a day of passes.</summary>
public abstract record PassOutcome
{
    private PassOutcome()
    {
    }

    /// <summary>What went wrong at the sensors, counted.</summary>
    public required PassFaults Faults { get; init; }

    /// <summary>The day's passes make a reading.</summary>
    /// <param name="Reading">The elongation, with its uncertainty.</param>
    public sealed record Measured(PassReading Reading) : PassOutcome;

    /// <summary>The day's passes make no reading.</summary>
    /// <param name="Doubt">The kind of doubt.</param>
    /// <param name="Why">Why they are not believed, and what to look at, in plain words.</param>
    public sealed record NotBelieved(PassDoubt Doubt, Phrase Why) : PassOutcome;
}
