using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace WearWatch.Storage.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class JobsAndKeys : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "JobRuns",
                columns: table => new
                {
                    Job = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Worker = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    StartedAt = table.Column<long>(type: "bigint", nullable: false),
                    DoneAt = table.Column<long>(type: "bigint", nullable: true),
                    Fault = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_JobRuns", x => x.Job);
                });

            migrationBuilder.CreateTable(
                name: "SharedKeys",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Xml = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SharedKeys", x => x.Id);
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "JobRuns");

            migrationBuilder.DropTable(
                name: "SharedKeys");
        }
    }
}
