namespace WearWatch.Worker.Intake;

/// <summary>The one way in for a single reading or event.</summary>
public sealed class IntakeDesk
{
    /// <summary>Takes a reading: when it answers Taken, it is committed and the chain has been assessed with it.</summary>
    public Task<IntakeAnswer> TakeReadingAsync(NewReading reading, CancellationToken ct = default) => throw new NotImplementedException();

    /// <summary>Takes an event: when it answers Taken, it is committed and the chain has been assessed with it.</summary>
    public Task<IntakeAnswer> TakeEventAsync(NewEvent happening, CancellationToken ct = default) => throw new NotImplementedException();

    /// <summary>A person's yes to a waiting reading.</summary>
    public Task<IntakeAnswer> ConfirmAsync(long readingId, string by, CancellationToken ct = default) => throw new NotImplementedException();

    /// <summary>Replaces a reading by another; the old row stays.</summary>
    public Task<IntakeAnswer> CorrectAsync(long readingId, NewReading replacement, CancellationToken ct = default) => throw new NotImplementedException();

    /// <summary>Takes a reading out of use; the old row stays.</summary>
    public Task<IntakeAnswer> WithdrawAsync(long readingId, string by, string why, CancellationToken ct = default) => throw new NotImplementedException();
}
