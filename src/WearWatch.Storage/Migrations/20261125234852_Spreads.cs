using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace WearWatch.Storage.Migrations
{
    /// <inheritdoc />
    public partial class Spreads : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "EarlyExponent",
                table: "Forecasts",
                type: "REAL",
                nullable: false,
                defaultValue: 0.0);

            migrationBuilder.AddColumn<double>(
                name: "LateExponent",
                table: "Forecasts",
                type: "REAL",
                nullable: false,
                defaultValue: 0.0);

            migrationBuilder.CreateTable(
                name: "PlantNotices",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false),
                    WhatToDo = table.Column<string>(type: "TEXT", nullable: false),
                    RaisedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EndedAt = table.Column<long>(type: "INTEGER", nullable: true),
                    EndedBy = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlantNotices", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Spreads",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    MadeAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Lives = table.Column<int>(type: "INTEGER", nullable: false),
                    Held = table.Column<int>(type: "INTEGER", nullable: false),
                    EarlyExponent = table.Column<double>(type: "REAL", nullable: false),
                    LateExponent = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Spreads", x => x.Id);
                });

            migrationBuilder.CreateIndex(
                name: "IX_PlantNotices_Kind",
                table: "PlantNotices",
                column: "Kind",
                unique: true,
                filter: "EndedAt IS NULL");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "PlantNotices");

            migrationBuilder.DropTable(
                name: "Spreads");

            migrationBuilder.DropColumn(
                name: "EarlyExponent",
                table: "Forecasts");

            migrationBuilder.DropColumn(
                name: "LateExponent",
                table: "Forecasts");
        }
    }
}
