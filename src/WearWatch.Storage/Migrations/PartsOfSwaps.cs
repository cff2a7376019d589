using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>Adds what a swap took from the stock, and how often its report was taken back.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261129014052_PartsOfSwaps")]
public sealed class PartsOfSwaps : SqlMigration;
