namespace WearWatch.Plant.Planning;

/// <summary>What is cut and laid out for the swap of a chain.</summary>
public sealed record KitJson
{
    /// <summary>The chain's name.</summary>
    public required string Chain { get; init; }

    /// <summary>Pitches cut from the pack; of a chain that holds a load all of them, since it comes whole.</summary>
    public required int CutPitches { get; init; }

    /// <summary>Connecting links beside them.</summary>
    public required int ConnectingLinks { get; init; }

    /// <summary>Offset links beside them.</summary>
    public required int OffsetLinks { get; init; }

    /// <summary>The attachments and their pattern; or empty.</summary>
    public required string Attachments { get; init; }

    /// <summary>The number under which the store keeps the chain; or empty.</summary>
    public required string StoreNumber { get; init; }

    /// <summary>The number of the sprockets that go with it; empty where they stay, or where it is not on record.</summary>
    public required string SprocketNumber { get; init; }

    /// <summary>The kit of a swap.</summary>
    /// <param name="face">The chain.</param>
    /// <param name="takesSprockets">Whether its sprockets are replaced with it.</param>
    public static KitJson Of(ChainFace face, bool takesSprockets)
    {
        var cut = face.Row.Family.CutFor(PlanQuery.PitchesOf(face.Row), face.Row.HoldsLoad);
        return new KitJson
        {
            Chain = face.Row.Name,
            CutPitches = cut.CutPitches,
            ConnectingLinks = cut.ConnectingLinks,
            OffsetLinks = cut.OffsetLinks,
            Attachments = face.Row.Attachments,
            StoreNumber = face.Row.StoreNumber,
            SprocketNumber = takesSprockets ? face.Row.SprocketNumber : "",
        };
    }
}
