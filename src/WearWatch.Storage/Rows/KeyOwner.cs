namespace WearWatch.Storage.Rows;

/// <summary>Who made the key of a row. Keys of one owner never meet those of the other, whatever they look like.</summary>
public enum KeyOwner
{
    /// <summary>Whoever sent the row: a phone, a person's page, a machine with a key.</summary>
    Sender,

    /// <summary>
    /// The program itself: a confirmation, a withdrawal, a row of a file, what follows from telemetry or a swap.
    /// </summary>
    Program,
}
