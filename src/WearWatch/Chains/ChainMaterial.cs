namespace WearWatch.Chains;

/// <summary>Of what a chain is made, where that changes its oil or its strength.</summary>
public enum ChainMaterial
{
    /// <summary>Carbon steel, as the catalogue's values are meant.</summary>
    Steel,

    /// <summary>Stainless steel: weaker than the catalogue says, and it grows more when warm.</summary>
    Stainless,

    /// <summary>Plated or coated steel.</summary>
    Plated,

    /// <summary>Plastic.</summary>
    Plastic,
}
