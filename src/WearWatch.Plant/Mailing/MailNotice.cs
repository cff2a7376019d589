using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Mailing;

/// <summary>An open notice that asks for a person, with what a mail says of it.</summary>
/// <param name="Notice">The notice.</param>
/// <param name="Chain">Its chain.</param>
/// <param name="Forecast">The chain's newest forecast; null when there is none.</param>
/// <param name="PlannedSwap">When the shutdown begins in which its swap is planned; null when none is.</param>
public sealed record MailNotice(NoticeRow Notice, ChainRow Chain, ForecastRow? Forecast, DateTimeOffset? PlannedSwap)
{
    /// <summary>Whether the chain lifts or holds a load.</summary>
    public bool HoldsLoad => Chain.Family.Lifts(Chain.Lifts, Chain.NotLiftingReason.Length > 0);

    /// <summary>Until when to act; null where no date is known: at once if it is urgent, else on the next round.</summary>
    public DateTimeOffset? DueAt => Notice.Kind switch
    {
        NoticeKind.LimitNear => HoldsLoad ? Forecast?.OutOfUseBy ?? Forecast?.EarlyDate : Forecast?.EarlyDate,
        NoticeKind.OilingDue => Forecast?.NextOilingAt,
        NoticeKind.TakeUpEnds => Forecast?.ShortenEarlyDate ?? Forecast?.TensionFrom,
        _ => null,
    };

    /// <summary>Whether it asks for a person.</summary>
    /// <param name="now">The moment for which that is asked.</param>
    public bool Asks(DateTimeOffset now) => new NoticeAttention(Notice.Kind, Notice.Urgent, HoldsLoad)
    {
        IsAcknowledged = Notice.Acknowledged,
        IsSnoozed = Notice.SnoozedUntil > now,
        SwapIsPlanned = PlannedSwap is not null,
    }.Standing == NoticeStanding.Asks;
}
