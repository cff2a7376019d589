using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>Adds how fast an express order comes, and how long before a stop its swaps are left alone.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261129010532_PreparedSwaps")]
public sealed class PreparedSwaps : SqlMigration;
