using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>Adds webhooks: receivers, what is on its way to them, and what was told.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261130104853_Webhooks")]
public sealed class Webhooks : SqlMigration;
