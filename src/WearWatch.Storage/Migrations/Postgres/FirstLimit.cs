using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>Keeps with a forecast which limit comes before that of the length.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261130022312_FirstLimit")]
public sealed class FirstLimit : SqlMigration;
