using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>What a new chain has of pitches and a new sprocket of teeth, told with the event.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261129004139_EventNewParts")]
public sealed class EventNewParts : SqlMigration;
