using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>What people do about a notice, and how it stands.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261129155526_NoticeSteps")]
public sealed class NoticeSteps : SqlMigration;
