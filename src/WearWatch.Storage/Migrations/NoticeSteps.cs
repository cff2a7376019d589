using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>What people do about a notice, and how it stands.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261129155521_NoticeSteps")]
public sealed class NoticeSteps : SqlMigration;
