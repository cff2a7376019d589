using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace WearWatch.Storage.Migrations.Postgres
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
                type: "boolean",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateTable(
                name: "SwapWorks",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Family = table.Column<int>(type: "integer", nullable: false),
                    Hours = table.Column<double>(type: "double precision", nullable: false),
                    HoursPer100Pitches = table.Column<double>(type: "double precision", nullable: false),
                    People = table.Column<int>(type: "integer", nullable: false)
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
