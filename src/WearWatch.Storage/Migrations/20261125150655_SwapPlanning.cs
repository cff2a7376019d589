using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace WearWatch.Storage.Migrations
{
    /// <inheritdoc />
    public partial class SwapPlanning : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "LineCosts",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Line = table.Column<string>(type: "TEXT", nullable: false),
                    StoppedPerHour = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LineCosts", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "PlanningCosts",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Money = table.Column<string>(type: "TEXT", nullable: false),
                    StoppedLinePerHour = table.Column<double>(type: "REAL", nullable: false),
                    StopHours = table.Column<double>(type: "REAL", nullable: false),
                    BreakdownHours = table.Column<double>(type: "REAL", nullable: false),
                    BreakdownExtra = table.Column<double>(type: "REAL", nullable: false),
                    MeanHoursToFailurePastLimit = table.Column<double>(type: "REAL", nullable: false),
                    OvertimePerHour = table.Column<double>(type: "REAL", nullable: false),
                    ExpressShare = table.Column<double>(type: "REAL", nullable: false),
                    UsualPitchPrice = table.Column<double>(type: "REAL", nullable: false),
                    SprocketPrice = table.Column<double>(type: "REAL", nullable: false),
                    HorizonWeeks = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanningCosts", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Spares",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Designation = table.Column<string>(type: "TEXT", nullable: false),
                    InStock = table.Column<int>(type: "INTEGER", nullable: false),
                    LeadDays = table.Column<int>(type: "INTEGER", nullable: false),
                    PackSize = table.Column<int>(type: "INTEGER", nullable: false),
                    Price = table.Column<double>(type: "REAL", nullable: false),
                    OnOrder = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Spares", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "SwapTerms",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    ParallelGroup = table.Column<string>(type: "TEXT", nullable: false),
                    Hours = table.Column<double>(type: "REAL", nullable: true),
                    People = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SwapTerms", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SwapTerms_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Swaps",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    WindowId = table.Column<string>(type: "TEXT", nullable: true),
                    Start = table.Column<long>(type: "INTEGER", nullable: true),
                    End = table.Column<long>(type: "INTEGER", nullable: true),
                    Placing = table.Column<int>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    DecidedBy = table.Column<string>(type: "TEXT", nullable: false),
                    DecidedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Outcome = table.Column<int>(type: "INTEGER", nullable: false),
                    OutcomeNote = table.Column<string>(type: "TEXT", nullable: false),
                    OutcomeBy = table.Column<string>(type: "TEXT", nullable: false),
                    OutcomeAt = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Swaps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Swaps_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "WindowRules",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Line = table.Column<string>(type: "TEXT", nullable: false),
                    FirstStart = table.Column<DateTime>(type: "TEXT", nullable: false),
                    LengthH = table.Column<double>(type: "REAL", nullable: false),
                    Recurrence = table.Column<string>(type: "TEXT", nullable: false),
                    Exceptions = table.Column<string>(type: "TEXT", nullable: false),
                    Crew = table.Column<string>(type: "TEXT", nullable: false),
                    CrewHours = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WindowRules", x => x.Id);
                });

            migrationBuilder.CreateIndex(
                name: "IX_LineCosts_Line",
                table: "LineCosts",
                column: "Line",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Spares_Kind_Designation",
                table: "Spares",
                columns: new[] { "Kind", "Designation" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SwapTerms_ChainId",
                table: "SwapTerms",
                column: "ChainId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Swaps_ChainId",
                table: "Swaps",
                column: "ChainId",
                unique: true,
                filter: "Outcome = 0");

            migrationBuilder.CreateIndex(
                name: "IX_Swaps_Outcome_Start",
                table: "Swaps",
                columns: new[] { "Outcome", "Start" });

            migrationBuilder.CreateIndex(
                name: "IX_WindowRules_Key",
                table: "WindowRules",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_WindowRules_Line",
                table: "WindowRules",
                column: "Line");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "LineCosts");

            migrationBuilder.DropTable(
                name: "PlanningCosts");

            migrationBuilder.DropTable(
                name: "Spares");

            migrationBuilder.DropTable(
                name: "SwapTerms");

            migrationBuilder.DropTable(
                name: "Swaps");

            migrationBuilder.DropTable(
                name: "WindowRules");
        }
    }
}
