namespace WearWatch.Storage.Migrations;

/// <summary>The text of the first layout of an engine, which lies beside its migration.</summary>
internal static class FirstLayout
{
    /// <summary>The SQL beside a migration.</summary>
    /// <param name="migration">The migration's class.</param>
    public static string Text(Type migration)
    {
        using var stream = migration.Assembly.GetManifestResourceStream($"{migration.FullName}.sql")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
