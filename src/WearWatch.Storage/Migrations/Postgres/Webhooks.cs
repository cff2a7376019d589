using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>Adds webhooks: receivers, what is on its way to them, and what was told.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261130104858_Webhooks")]
public sealed class Webhooks : SqlMigration;
