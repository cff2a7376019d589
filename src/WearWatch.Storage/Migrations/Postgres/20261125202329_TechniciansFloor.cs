using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace WearWatch.Storage.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class TechniciansFloor : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Mark",
                table: "Plants",
                type: "text",
                nullable: false,
                defaultValue: "",
                collation: "C");

            migrationBuilder.CreateTable(
                name: "RoundHands",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Key = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Day = table.Column<DateOnly>(type: "date", nullable: false),
                    Line = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Person = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    GivenBack = table.Column<bool>(type: "boolean", nullable: false),
                    At = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RoundHands", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Walks",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Place = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Walks", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Walks_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_RoundHands_Day_Line",
                table: "RoundHands",
                columns: new[] { "Day", "Line" });

            migrationBuilder.CreateIndex(
                name: "IX_RoundHands_Key",
                table: "RoundHands",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Walks_ChainId",
                table: "Walks",
                column: "ChainId",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "RoundHands");

            migrationBuilder.DropTable(
                name: "Walks");

            migrationBuilder.DropColumn(
                name: "Mark",
                table: "Plants");
        }
    }
}
