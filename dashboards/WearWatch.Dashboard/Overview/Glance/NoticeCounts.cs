using WearWatch.Wear;

namespace WearWatch.Dashboard.Overview.Glance;

/// <summary>How many notices are open, and how many of them ask for a person.</summary>
/// <param name="Open">All that are open.</param>
/// <param name="Asking">Of these, what nobody has acknowledged or put off and no plan answers.</param>
public sealed record NoticeCounts(int Open, int Asking)
{
    /// <summary>Counts the open ones.</summary>
    public NoticeCounts(IReadOnlyCollection<NoticeAttention> open)
        : this(open.Count, open.Count(n => n.Standing == NoticeStanding.Asks))
    {
    }

    /// <summary>Those that ask for nobody at the moment.</summary>
    public int Quiet => Open - Asking;
}
