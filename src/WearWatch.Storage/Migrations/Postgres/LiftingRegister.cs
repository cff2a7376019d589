using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>What the register of lifting chains keeps, and the measures of round links.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261128213413_LiftingRegister")]
public sealed class LiftingRegister : SqlMigration;
