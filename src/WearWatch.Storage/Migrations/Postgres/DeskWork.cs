using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>Orders, plan versions, what a swap took, columns of other files, refused rows, first steps left out.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261129103347_DeskWork")]
public sealed class DeskWork : SqlMigration;
