using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>The first layout, as the tool wrote it in SQL: shorter to read than its calls.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261128200957_Initial")]
public sealed class Initial : Migration
{
    /// <inheritdoc />
    protected override void Up(MigrationBuilder migrationBuilder) => migrationBuilder.Sql(FirstLayout.Text(typeof(Initial)));
}
