using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>Mappings of foreign signals, the last messages heard, and edge nodes of Sparkplug with their metrics.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261130104837_ForeignSignals")]
public sealed class ForeignSignals : SqlMigration;
