using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using WearWatch.Storage.Engines;

namespace WearWatch.Storage.Migrations.Postgres;

/// <summary>Notices by mail: what people wish, mails that wait, notices that were mailed.</summary>
[DbContext(typeof(PostgresWearDb))]
[Migration("20261130075825_NoticeMail")]
public sealed class NoticeMail : SqlMigration;
