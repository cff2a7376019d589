using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace WearWatch.Storage.Migrations
{
    /// <inheritdoc />
    public partial class SwapWork : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<bool>(
                name: "WithSprockets",
                table: "SwapTerms",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateTable(
                name: "SwapWorks",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Family = table.Column<int>(type: "INTEGER", nullable: false),
                    Hours = table.Column<double>(type: "REAL", nullable: false),
                    HoursPer100Pitches = table.Column<double>(type: "REAL", nullable: false),
                    People = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SwapWorks", x => x.Id);
                });

            migrationBuilder.CreateIndex(
                name: "IX_SwapWorks_Family",
                table: "SwapWorks",
                column: "Family",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "SwapWorks");

            migrationBuilder.DropColumn(
                name: "WithSprockets",
                table: "SwapTerms");
        }
    }
}
