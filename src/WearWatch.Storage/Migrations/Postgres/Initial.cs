using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>The first layout.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261128200957_Initial")]
public sealed class Initial : SqlMigration;
