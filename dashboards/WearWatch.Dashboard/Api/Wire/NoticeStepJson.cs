namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What was done about a notice.</summary>
internal sealed record NoticeStepJson
{
    /// <summary>
    /// What: <c>acknowledged</c>, <c>assigned</c>, <c>snoozed</c>, <c>commented</c>, <c>woken</c> or <c>worsened</c>.
    /// </summary>
    public required string Step { get; init; }

    public required DateTimeOffset At { get; init; }

    /// <summary>Who; empty for the program itself.</summary>
    public required string By { get; init; }

    /// <summary>To whom it was assigned; empty for nobody.</summary>
    public required string Person { get; init; }

    /// <summary>Until which day of the plant it was put off.</summary>
    public required DateOnly? Until { get; init; }

    public required string Comment { get; init; }
}
