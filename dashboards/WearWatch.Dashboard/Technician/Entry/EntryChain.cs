using WearWatch.Gauging;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Technician.Entry;

/// <summary>What the entry page knows of the chain that is measured.</summary>
public sealed record EntryChain
{
    /// <summary>The chain.</summary>
    public required ChainRow Row { get; init; }

    /// <summary>What is concluded of it so far.</summary>
    public required Assessment Assessment { get; init; }

    /// <summary>Its newest reading that counts; null when it has none.</summary>
    public required ReadingRow? Last { get; init; }

    /// <summary>The newest counter that was told; null when none was.</summary>
    public required double? LastCounterH { get; init; }

    /// <summary>The reading that is to be corrected; null for a new one.</summary>
    public required ReadingRow? Corrects { get; init; }

    /// <summary>The planner's date as it stands.</summary>
    public required DateTimeOffset? EarlyDate { get; init; }

    /// <summary>What to measure.</summary>
    public SpanProposal Proposal => SpanProposal.For(SpanCase.Of(Assessment.Card, Assessment.Limit) with
    {
        ElongationPercent = Assessment.ElongationPercent,
        LastPitches = Last?.Pitches,
        LastPlace = Last?.Place ?? "",
    });

    /// <summary>Now.</summary>
    public required PlantTime Time { get; init; }
}
