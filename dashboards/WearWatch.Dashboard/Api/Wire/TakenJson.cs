namespace WearWatch.Dashboard.Api.Wire;

/// <summary>What became of something that was told: <c>accepted</c>, or <c>waiting</c> for a person's yes, with why.</summary>
internal sealed record TakenJson(long Id, string Standing, string Why);
