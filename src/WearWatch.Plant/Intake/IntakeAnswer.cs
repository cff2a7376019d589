using WearWatch.Plant.Settings;

namespace WearWatch.Plant.Intake;

/// <summary>What became of something that was told.</summary>
public abstract record IntakeAnswer
{
    private IntakeAnswer()
    {
    }

    /// <summary>It is stored for good and the chain has been assessed with it.</summary>
    /// <param name="Id">Its row.</param>
    /// <param name="AlreadyKnown">Whether it had been told before, so that nothing changed.</param>
    public sealed record Taken(long Id, bool AlreadyKnown) : IntakeAnswer;

    /// <summary>It is stored for good, and is used as soon as a person says yes to it.</summary>
    /// <param name="Id">Its row.</param>
    /// <param name="Why">What looks wrong, for the person who told it.</param>
    public sealed record Waiting(long Id, Phrase Why) : IntakeAnswer;

    /// <summary>It is not stored.</summary>
    /// <param name="Refusals">What is wrong, field by field.</param>
    public sealed record Refused(IReadOnlyList<Refusal> Refusals) : IntakeAnswer;
}
