using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>Orders, plan versions, what a swap took, columns of other files, refused rows, first steps left out.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261129103338_DeskWork")]
public sealed class DeskWork : SqlMigration;
