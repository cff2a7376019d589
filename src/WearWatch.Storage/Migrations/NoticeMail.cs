using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>Notices by mail: what people wish, mails that wait, notices that were mailed.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261130075821_NoticeMail")]
public sealed class NoticeMail : SqlMigration;
