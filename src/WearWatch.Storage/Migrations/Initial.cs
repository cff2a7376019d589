using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>The first layout.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261128200949_Initial")]
public sealed class Initial : SqlMigration;
