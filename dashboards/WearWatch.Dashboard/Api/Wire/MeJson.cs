namespace WearWatch.Dashboard.Api.Wire;

/// <summary>Who asks; id is null for a key, and id and name while nobody is set up.</summary>
public sealed record MeJson(int? Id, string? Name, IReadOnlyList<string> Roles, bool OpenUntilSetUp);
