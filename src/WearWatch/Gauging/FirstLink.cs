namespace WearWatch.Gauging;

/// <summary>With which link a measured length begins. It matters for an odd number of pitches only.</summary>
public enum FirstLink
{
    /// <summary>Nobody looked.</summary>
    NotTold,

    /// <summary>An outer link: its pins sit fast, so that it does not grow from pin to pin.</summary>
    Outer,

    /// <summary>An inner link: all the wear of a pair of joints shows from pin to pin across it.</summary>
    Inner,
}
