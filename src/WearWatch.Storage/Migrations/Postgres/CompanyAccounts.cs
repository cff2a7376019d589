using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>People who sign in with an account of their company, and what its provider knows of their sessions.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261130105103_CompanyAccounts")]
public sealed class CompanyAccounts : SqlMigration;
