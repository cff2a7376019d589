namespace WearWatch.Chains;

/// <summary>What the place of a chain asks of its oil.</summary>
public enum OilPlace
{
    /// <summary>Nothing besides.</summary>
    Ordinary,

    /// <summary>Food or packaging may be touched: only a lubricant registered for that (H1).</summary>
    Food,

    /// <summary>An explosive atmosphere.</summary>
    ExplosiveAtmosphere,

    /// <summary>No wet oil: sand and dust would stick, or the goods must stay clean. A dry film is used.</summary>
    DryFilm,
}
