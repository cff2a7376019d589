using WearWatch.Chains;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>An event on its way in, as it was told; its facts are not checked yet.</summary>
public sealed record NewEvent
{
    /// <summary>Given by whoever sends it: the same key sent twice is stored once.</summary>
    public required string Key { get; init; }

    /// <summary>Who made the key.</summary>
    public KeyOwner KeyOwner { get; init; }

    /// <summary>What was told: its texts without blanks around them; its time or a counter is needed.</summary>
    public required ChainEvent Told
    {
        get;
        init => field = value with { Lot = value.Lot.Trim(), Note = value.Note.Trim() };
    }

    /// <summary>Who or what told it.</summary>
    public required string ToldBy { get; init; }

    /// <summary>Whether a person has said yes to a replacement of a chain that is hardly worn.</summary>
    public bool Confirmed { get; init; }
}
