using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>Adds what a swap took from the stock, and how often its report was taken back.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261129014103_PartsOfSwaps")]
public sealed class PartsOfSwaps : SqlMigration;
