using System.Diagnostics;
using WearWatch.Phrases;

namespace WearWatch.Chains;

/// <summary>What a chain has to stand, in the words of the trade.</summary>
public static class DutyWords
{
    /// <summary>How well a chain is kept in oil.</summary>
    public static Phrase Of(LubricationState state) => state switch
    {
        LubricationState.Auto => $"automatic",
        LubricationState.Manual => $"by hand",
        LubricationState.Poor => $"too seldom",
        LubricationState.Dry => $"runs dry",
        _ => throw new UnreachableException($"Lubrication {state} has no words."),
    };

    /// <summary>How oil is brought to a chain.</summary>
    public static Phrase Of(OilMethod method) => method switch
    {
        OilMethod.Hand => $"by hand",
        OilMethod.Drip => $"drip feed",
        OilMethod.Bath => $"bath or disc",
        OilMethod.Stream => $"oil stream",
        OilMethod.Lubricator => $"automatic lubricator",
        _ => throw new UnreachableException($"Oil method {method} has no words."),
    };

    /// <summary>How much dust reaches the chain.</summary>
    public static Phrase Of(DustLevel dust) => dust switch
    {
        DustLevel.Clean => $"clean",
        DustLevel.Moderate => $"moderate",
        DustLevel.Heavy => $"heavy",
        _ => throw new UnreachableException($"Dust {dust} has no words."),
    };
}
