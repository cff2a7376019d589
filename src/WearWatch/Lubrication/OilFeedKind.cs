namespace WearWatch.Lubrication;

/// <summary>How oil has to reach a chain, the more surely the faster it runs.</summary>
public enum OilFeedKind
{
    /// <summary>By hand or by drip (type A).</summary>
    ManualOrDrip,

    /// <summary>By bath or by oil disc (type B).</summary>
    BathOrDisc,

    /// <summary>By an oil stream (type C).</summary>
    OilStream,
}
