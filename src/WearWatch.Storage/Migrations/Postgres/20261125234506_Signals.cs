using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace WearWatch.Storage.Migrations.Postgres
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
                type: "double precision",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "PassDays",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Day = table.Column<long>(type: "bigint", nullable: false),
                    LastAt = table.Column<long>(type: "bigint", nullable: false),
                    ElongationPct = table.Column<double>(type: "double precision", nullable: true),
                    UncertaintyPct = table.Column<double>(type: "double precision", nullable: true),
                    Pitches = table.Column<double>(type: "double precision", nullable: true),
                    Doubt = table.Column<int>(type: "integer", nullable: true),
                    Why = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Bursts = table.Column<int>(type: "integer", nullable: false),
                    Passes = table.Column<int>(type: "integer", nullable: false),
                    Missed = table.Column<int>(type: "integer", nullable: false),
                    Doubled = table.Column<int>(type: "integer", nullable: false),
                    Stops = table.Column<int>(type: "integer", nullable: false),
                    UnusedBursts = table.Column<int>(type: "integer", nullable: false)
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
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Day = table.Column<long>(type: "bigint", nullable: false),
                    From = table.Column<long>(type: "bigint", nullable: false),
                    To = table.Column<long>(type: "bigint", nullable: false),
                    Hours = table.Column<double>(type: "double precision", nullable: false),
                    GapHours = table.Column<double>(type: "double precision", nullable: false),
                    Resets = table.Column<int>(type: "integer", nullable: false),
                    Source = table.Column<int>(type: "integer", nullable: false)
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
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    From = table.Column<long>(type: "bigint", nullable: false),
                    DistanceMm = table.Column<double>(type: "double precision", nullable: false),
                    DistanceUncertaintyMm = table.Column<double>(type: "double precision", nullable: false),
                    DriverTeeth = table.Column<int>(type: "integer", nullable: true),
                    ToldBy = table.Column<string>(type: "text", nullable: false, collation: "C")
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
