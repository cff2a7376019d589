using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>
/// Sessions, tries at the door, the security log; keys of our own apart from those of senders; whose import it was.
/// </summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261129103252_SafeToRun")]
public sealed class SafeToRun : SqlMigration;
