using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace WearWatch.Storage.Migrations;

/// <summary>What the register of lifting chains keeps, and the measures of round links.</summary>
[DbContext(typeof(WearDb))]
[Migration("20261128213410_LiftingRegister")]
public sealed class LiftingRegister : SqlMigration;
