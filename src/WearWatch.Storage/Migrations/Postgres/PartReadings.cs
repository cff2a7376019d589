using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>Readings of parts beside the elongation, and what a sprocket has on record.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261129160752_PartReadings")]
public sealed class PartReadings : SqlMigration;
