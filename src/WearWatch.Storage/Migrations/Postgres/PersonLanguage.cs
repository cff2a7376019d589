using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>The language that a person chose.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261129104401_PersonLanguage")]
public sealed class PersonLanguage : SqlMigration;
