using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>
/// Sessions, tries at the door, the security log; keys of our own apart from those of senders; whose import it was.
/// </summary>
[DbContext(typeof(WearDb))]
[Migration("20261129103243_SafeToRun")]
public sealed class SafeToRun : SqlMigration;
