using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>Readings of parts beside the elongation, and what a sprocket has on record.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261129160738_PartReadings")]
public sealed class PartReadings : SqlMigration;
