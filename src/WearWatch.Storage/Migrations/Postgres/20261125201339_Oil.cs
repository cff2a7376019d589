using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace WearWatch.Storage.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Oil : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "AmbientC",
                table: "Forecasts",
                type: "double precision",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MeanHoursSinceOiling",
                table: "Forecasts",
                type: "double precision",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "OilAmountMl",
                table: "Events",
                type: "double precision",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "OilGrade",
                table: "Events",
                type: "text",
                nullable: false,
                defaultValue: "",
                collation: "C");

            migrationBuilder.AddColumn<int>(
                name: "OilMethod",
                table: "Events",
                type: "integer",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "AmbientC",
                table: "Chains",
                type: "double precision",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "OilGrade",
                table: "Chains",
                type: "text",
                nullable: false,
                defaultValue: "",
                collation: "C");

            migrationBuilder.AddColumn<int>(
                name: "OilMethod",
                table: "Chains",
                type: "integer",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "OilTerms",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    CostOfOiling = table.Column<double>(type: "double precision", nullable: true),
                    CostOfChain = table.Column<double>(type: "double precision", nullable: true),
                    ModerateDustFactor = table.Column<double>(type: "double precision", nullable: false),
                    HeavyDustFactor = table.Column<double>(type: "double precision", nullable: false),
                    WarmFactor = table.Column<double>(type: "double precision", nullable: false),
                    FirstIntervalFactor = table.Column<double>(type: "double precision", nullable: false),
                    PulsesMissed = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_OilTerms", x => x.Id);
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "OilTerms");

            migrationBuilder.DropColumn(
                name: "AmbientC",
                table: "Forecasts");

            migrationBuilder.DropColumn(
                name: "MeanHoursSinceOiling",
                table: "Forecasts");

            migrationBuilder.DropColumn(
                name: "OilAmountMl",
                table: "Events");

            migrationBuilder.DropColumn(
                name: "OilGrade",
                table: "Events");

            migrationBuilder.DropColumn(
                name: "OilMethod",
                table: "Events");

            migrationBuilder.DropColumn(
                name: "AmbientC",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "OilGrade",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "OilMethod",
                table: "Chains");
        }
    }
}
