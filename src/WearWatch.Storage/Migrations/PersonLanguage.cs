using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>The language that a person chose.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261129104355_PersonLanguage")]
public sealed class PersonLanguage : SqlMigration;
