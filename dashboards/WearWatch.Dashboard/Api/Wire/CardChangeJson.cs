namespace WearWatch.Dashboard.Api.Wire;

/// <summary>One field of a card that was changed.</summary>
internal sealed record CardChangeJson(long Id, DateTimeOffset At, string By, string Field, string From, string To, string Why);
