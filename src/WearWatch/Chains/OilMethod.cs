namespace WearWatch.Chains;

/// <summary>How oil is brought to a chain.</summary>
public enum OilMethod
{
    /// <summary>By a person, with brush or can.</summary>
    Hand,

    /// <summary>By a drip feed.</summary>
    Drip,

    /// <summary>The chain or a disc dips into a bath.</summary>
    Bath,

    /// <summary>By a pump, in a stream.</summary>
    Stream,

    /// <summary>By an automatic lubricator, which gives a small amount at every pulse.</summary>
    Lubricator,
}
