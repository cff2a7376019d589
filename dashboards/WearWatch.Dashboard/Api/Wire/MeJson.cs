namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// Who asks; id is null for a key, and id and name while nobody is set up; on a shared tablet one can switch by PIN.
/// </summary>
public sealed record MeJson(int? Id, string? Name, IReadOnlyList<string> Roles, bool OpenUntilSetUp, bool SharedTablet);
