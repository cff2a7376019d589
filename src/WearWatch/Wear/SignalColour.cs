namespace WearWatch.Wear;

/// <summary>The colour of a state on every screen, in the meaning that IEC 60073 gives it.</summary>
/// <remarks>Source: docs/references.md [19]. A colour never stands alone: a shape and words stand with it.</remarks>
public enum SignalColour
{
    /// <summary>No meaning of its own: said in words. What lifts is never shown in a colour that releases it.</summary>
    Plain,

    /// <summary>Nothing is known.</summary>
    Grey,

    /// <summary>Normal. Never of a chain that lifts or holds a load.</summary>
    Green,

    /// <summary>Attention.</summary>
    Yellow,

    /// <summary>Danger: act now.</summary>
    Red,
}
