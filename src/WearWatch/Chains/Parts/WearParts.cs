using WearWatch.Phrases;

namespace WearWatch.Chains.Parts;

/// <summary>What holds of each part, whatever the chain.</summary>
public static class WearParts
{
    extension(WearPart part)
    {
        /// <summary>Whether it grows towards its limit, from nothing when new; heights and diameters shrink.</summary>
        public bool Grows => part is WearPart.ToothRoot or WearPart.ToothHook or WearPart.Sag or WearPart.Alignment;

        /// <summary>Whether it belongs to the chain and goes with it.</summary>
        public bool IsOfChain => !part.Grows;

        /// <summary>Whether it belongs to the sprockets and stays when the chain goes.</summary>
        public bool IsOfSprocket => part is WearPart.ToothRoot or WearPart.ToothHook;

        /// <summary>Whether a trend over the running hours makes sense; what is out of line was moved, not worn.</summary>
        public bool HasTrend => part is not WearPart.Alignment;

        /// <summary>What it is called on screens.</summary>
        public Phrase Words => part switch
        {
            WearPart.PlateHeight => $"plate height",
            WearPart.RollerDiameter => $"roller diameter",
            WearPart.PinDiameter => $"pin diameter",
            WearPart.BushDiameter => $"bush diameter",
            WearPart.ToothRoot => $"tooth root, worn depth",
            WearPart.ToothHook => $"tooth hook, depth",
            WearPart.Sag => $"slack, total movement at mid-span",
            _ => $"sprockets out of line",
        };

        /// <summary>Whether what happened renews it, or sets it anew.</summary>
        /// <param name="kind">What happened.</param>
        public bool IsRenewedBy(ChainEventKind kind) => kind switch
        {
            ChainEventKind.Replacement => !part.IsOfSprocket && part is not WearPart.Alignment,
            ChainEventKind.SprocketReplaced => part.IsOfSprocket || part is WearPart.Alignment,
            ChainEventKind.Tensioned or ChainEventKind.Shortened => part is WearPart.Sag,
            _ => false,
        };
    }
}
