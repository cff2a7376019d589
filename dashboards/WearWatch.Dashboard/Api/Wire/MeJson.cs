namespace WearWatch.Dashboard.Api.Wire;

/// <summary>
/// Who asks; id is null for a key, and id and name while nobody is set up; on a shared tablet one can switch by PIN;
/// the language is null while the person has chosen none.
/// </summary>
public sealed record MeJson(int? Id, string? Name, IReadOnlyList<string> Roles, bool OpenUntilSetUp, bool SharedTablet,
    string? Language);

/// <summary>The language that a person chooses.</summary>
public sealed record SpeechJson(string? Language);
