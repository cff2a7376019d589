using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>Adds the date of shortening, material and place of a chain, its spare kit, and the limit of a group.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261129113053_TwoDatesAndKit")]
public sealed class TwoDatesAndKit : SqlMigration;
