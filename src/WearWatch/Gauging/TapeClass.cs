namespace WearWatch.Gauging;

/// <summary>Accuracy classes of measuring tapes by OIML R 35 and MI-008. The class stands on the tape, in an oval.</summary>
public enum TapeClass
{
    /// <summary>The finest.</summary>
    I,

    /// <summary>The usual one of a good steel tape.</summary>
    II,

    /// <summary>The coarsest.</summary>
    III,
}
