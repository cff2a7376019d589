using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>Adds how fast an express order comes, and how long before a stop its swaps are left alone.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261129010544_PreparedSwaps")]
public sealed class PreparedSwaps : SqlMigration;
