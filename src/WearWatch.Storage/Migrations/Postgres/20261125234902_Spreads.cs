using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace WearWatch.Storage.Migrations.Postgres
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
                type: "double precision",
                nullable: false,
                defaultValue: 0.0);

            migrationBuilder.AddColumn<double>(
                name: "LateExponent",
                table: "Forecasts",
                type: "double precision",
                nullable: false,
                defaultValue: 0.0);

            migrationBuilder.CreateTable(
                name: "PlantNotices",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Kind = table.Column<int>(type: "integer", nullable: false),
                    Why = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    WhatToDo = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    RaisedAt = table.Column<long>(type: "bigint", nullable: false),
                    EndedAt = table.Column<long>(type: "bigint", nullable: true),
                    EndedBy = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlantNotices", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Spreads",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    MadeAt = table.Column<long>(type: "bigint", nullable: false),
                    Lives = table.Column<int>(type: "integer", nullable: false),
                    Held = table.Column<int>(type: "integer", nullable: false),
                    EarlyExponent = table.Column<double>(type: "double precision", nullable: false),
                    LateExponent = table.Column<double>(type: "double precision", nullable: false)
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
                filter: "\"EndedAt\" IS NULL");
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
