using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>The first layout, as the tool wrote it in SQL: shorter to read than its calls.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261128200949_Initial")]
public sealed class Initial : Migration
{
    /// <inheritdoc />
    protected override void Up(MigrationBuilder migrationBuilder) => migrationBuilder.Sql(FirstLayout.Text(typeof(Initial)));
}
