using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace WearWatch.Storage.Migrations
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
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "MeanHoursSinceOiling",
                table: "Forecasts",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "OilAmountMl",
                table: "Events",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "OilGrade",
                table: "Events",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<int>(
                name: "OilMethod",
                table: "Events",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "AmbientC",
                table: "Chains",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "OilGrade",
                table: "Chains",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<int>(
                name: "OilMethod",
                table: "Chains",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "OilTerms",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    CostOfOiling = table.Column<double>(type: "REAL", nullable: true),
                    CostOfChain = table.Column<double>(type: "REAL", nullable: true),
                    ModerateDustFactor = table.Column<double>(type: "REAL", nullable: false),
                    HeavyDustFactor = table.Column<double>(type: "REAL", nullable: false),
                    WarmFactor = table.Column<double>(type: "REAL", nullable: false),
                    FirstIntervalFactor = table.Column<double>(type: "REAL", nullable: false),
                    PulsesMissed = table.Column<double>(type: "REAL", nullable: false)
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
