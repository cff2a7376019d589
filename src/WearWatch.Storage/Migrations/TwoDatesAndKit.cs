using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>Adds the date of shortening, material and place of a chain, its spare kit, and the limit of a group.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261129112800_TwoDatesAndKit")]
public sealed class TwoDatesAndKit : SqlMigration;
