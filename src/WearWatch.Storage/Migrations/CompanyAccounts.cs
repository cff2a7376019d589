using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>People who sign in with an account of their company, and what its provider knows of their sessions.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261130105059_CompanyAccounts")]
public sealed class CompanyAccounts : SqlMigration;
