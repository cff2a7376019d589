using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>Reports of other systems on the work orders of planned swaps.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261130150605_WorkOrders")]
public sealed class WorkOrders : SqlMigration;
