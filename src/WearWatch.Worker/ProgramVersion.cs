using System.Reflection;

namespace WearWatch.Worker;

/// <summary>Which program this is: its version and the state of the source that it was built from.</summary>
public static class ProgramVersion
{
    /// <summary>Such as <c>0.1.0+3f2c9a1</c>.</summary>
    public static string Text { get; } =
        Informational.Split('+') is [var version, { Length: > Short } source]
            ? $"{version}+{source[..Short]}"
            : Informational;

    private const int Short = 7;

    private static string Informational =>
        typeof(ProgramVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
}
