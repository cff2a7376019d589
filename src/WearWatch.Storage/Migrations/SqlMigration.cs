using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>A step from one layout to the next as SQL, which lies beside its class: shorter to read than the tool's calls.</summary>
public abstract class SqlMigration : Migration
{
    /// <inheritdoc />
    protected sealed override void Up(MigrationBuilder migrationBuilder)
    {
        using var stream = GetType().Assembly.GetManifestResourceStream($"{GetType().FullName}.sql")!;
        using var reader = new StreamReader(stream);
        migrationBuilder.Sql(reader.ReadToEnd());
    }
}
