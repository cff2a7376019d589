using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>Mappings of foreign signals, the last messages heard, and edge nodes of Sparkplug with their metrics.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261130104842_ForeignSignals")]
public sealed class ForeignSignals : SqlMigration;
