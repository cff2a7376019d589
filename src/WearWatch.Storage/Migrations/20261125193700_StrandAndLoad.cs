using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace WearWatch.Storage.Migrations
{
    /// <inheritdoc />
    public partial class StrandAndLoad : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "LoadN",
                table: "Readings",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Strand",
                table: "Readings",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "Taut",
                table: "Readings",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "LoadN",
                table: "Readings");

            migrationBuilder.DropColumn(
                name: "Strand",
                table: "Readings");

            migrationBuilder.DropColumn(
                name: "Taut",
                table: "Readings");
        }
    }
}
