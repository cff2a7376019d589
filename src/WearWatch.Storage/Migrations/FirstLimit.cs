using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>Keeps with a forecast which limit comes before that of the length.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261130022141_FirstLimit")]
public sealed class FirstLimit : SqlMigration;
