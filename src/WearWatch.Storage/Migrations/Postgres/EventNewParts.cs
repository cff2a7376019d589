using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>What a new chain has of pitches and a new sprocket of teeth, told with the event.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261129004142_EventNewParts")]
public sealed class EventNewParts : SqlMigration;
