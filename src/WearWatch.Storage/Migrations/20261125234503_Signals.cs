using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace WearWatch.Storage.Migrations
{
    /// <inheritdoc />
    public partial class Signals : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "LengthUncertaintyMm",
                table: "Readings",
                type: "REAL",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "PassDays",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Day = table.Column<long>(type: "INTEGER", nullable: false),
                    LastAt = table.Column<long>(type: "INTEGER", nullable: false),
                    ElongationPct = table.Column<double>(type: "REAL", nullable: true),
                    UncertaintyPct = table.Column<double>(type: "REAL", nullable: true),
                    Pitches = table.Column<double>(type: "REAL", nullable: true),
                    Doubt = table.Column<int>(type: "INTEGER", nullable: true),
                    Why = table.Column<string>(type: "TEXT", nullable: false),
                    Bursts = table.Column<int>(type: "INTEGER", nullable: false),
                    Passes = table.Column<int>(type: "INTEGER", nullable: false),
                    Missed = table.Column<int>(type: "INTEGER", nullable: false),
                    Doubled = table.Column<int>(type: "INTEGER", nullable: false),
                    Stops = table.Column<int>(type: "INTEGER", nullable: false),
                    UnusedBursts = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PassDays", x => new { x.ChainId, x.Day });
                    table.ForeignKey(
                        name: "FK_PassDays_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "RunDays",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Day = table.Column<long>(type: "INTEGER", nullable: false),
                    From = table.Column<long>(type: "INTEGER", nullable: false),
                    To = table.Column<long>(type: "INTEGER", nullable: false),
                    Hours = table.Column<double>(type: "REAL", nullable: false),
                    GapHours = table.Column<double>(type: "REAL", nullable: false),
                    Resets = table.Column<int>(type: "INTEGER", nullable: false),
                    Source = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RunDays", x => new { x.ChainId, x.Day });
                    table.ForeignKey(
                        name: "FK_RunDays_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SensorPairs",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    From = table.Column<long>(type: "INTEGER", nullable: false),
                    DistanceMm = table.Column<double>(type: "REAL", nullable: false),
                    DistanceUncertaintyMm = table.Column<double>(type: "REAL", nullable: false),
                    DriverTeeth = table.Column<int>(type: "INTEGER", nullable: true),
                    ToldBy = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SensorPairs", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SensorPairs_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_SensorPairs_ChainId_From",
                table: "SensorPairs",
                columns: new[] { "ChainId", "From" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "PassDays");

            migrationBuilder.DropTable(
                name: "RunDays");

            migrationBuilder.DropTable(
                name: "SensorPairs");

            migrationBuilder.DropColumn(
                name: "LengthUncertaintyMm",
                table: "Readings");
        }
    }
}
