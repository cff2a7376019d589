using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>Reports of other systems on the work orders of planned swaps.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261130150557_WorkOrders")]
public sealed class WorkOrders : SqlMigration;
