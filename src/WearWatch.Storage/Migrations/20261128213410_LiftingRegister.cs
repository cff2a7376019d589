using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace WearWatch.Storage.Migrations
{
    /// <inheritdoc />
    public partial class LiftingRegister : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(
                name: "LawRegion",
                table: "Plants",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<long>(
                name: "LastLinkMeasureId",
                table: "Forecasts",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "LinksCondition",
                table: "Forecasts",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<long>(
                name: "LinksEarlyDate",
                table: "Forecasts",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "LinksSaid",
                table: "Forecasts",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<long>(
                name: "OutOfUseBy",
                table: "Forecasts",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "LinkCount",
                table: "Chains",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "LinkDiameterLimitMm",
                table: "Chains",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "LinkDiameterMm",
                table: "Chains",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "LinkOneLimitMm",
                table: "Chains",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "LinkOuterEdges",
                table: "Chains",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<double>(
                name: "LinkSeveralLimitMm",
                table: "Chains",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "LinkTableSource",
                table: "Chains",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<double>(
                name: "LinkUnusedSeveralMm",
                table: "Chains",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "LinkUse",
                table: "Chains",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "NotLiftingReason",
                table: "Chains",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.CreateTable(
                name: "Appointments",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    Qualification = table.Column<string>(type: "TEXT", nullable: false),
                    Line = table.Column<string>(type: "TEXT", nullable: false),
                    Family = table.Column<string>(type: "TEXT", nullable: false),
                    From = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Until = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    AppointedBy = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    EndsId = table.Column<int>(type: "INTEGER", nullable: true),
                    Why = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Appointments", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Appointments_Appointments_EndsId",
                        column: x => x.EndsId,
                        principalTable: "Appointments",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LiftingFiles",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    ContentType = table.Column<string>(type: "TEXT", nullable: false),
                    Content = table.Column<byte[]>(type: "BLOB", nullable: false),
                    ToldBy = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAt = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LiftingFiles", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LiftingFiles_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LiftingStates",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Standing = table.Column<int>(type: "INTEGER", nullable: false),
                    Faults = table.Column<string>(type: "TEXT", nullable: false),
                    HasCertificate = table.Column<bool>(type: "INTEGER", nullable: false),
                    LookedAt = table.Column<long>(type: "INTEGER", nullable: true),
                    MeasuredAt = table.Column<long>(type: "INTEGER", nullable: true),
                    ExaminedOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ExaminationDue = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    RemedyBy = table.Column<DateOnly>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LiftingStates", x => x.ChainId);
                    table.ForeignKey(
                        name: "FK_LiftingStates_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LinkMeasures",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    TakenAt = table.Column<long>(type: "INTEGER", nullable: true),
                    CounterH = table.Column<double>(type: "REAL", nullable: true),
                    Place = table.Column<string>(type: "TEXT", nullable: false),
                    Tool = table.Column<int>(type: "INTEGER", nullable: false),
                    OneLinkMm = table.Column<double>(type: "REAL", nullable: true),
                    SeveralLinksMm = table.Column<double>(type: "REAL", nullable: true),
                    Links = table.Column<int>(type: "INTEGER", nullable: true),
                    OuterEdges = table.Column<bool>(type: "INTEGER", nullable: false),
                    D1Mm = table.Column<double>(type: "REAL", nullable: true),
                    D2Mm = table.Column<double>(type: "REAL", nullable: true),
                    Written = table.Column<string>(type: "TEXT", nullable: false),
                    Standing = table.Column<int>(type: "INTEGER", nullable: false),
                    WhyWaiting = table.Column<string>(type: "TEXT", nullable: false),
                    CorrectsId = table.Column<long>(type: "INTEGER", nullable: true),
                    Withdraws = table.Column<bool>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    ToldBy = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAt = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LinkMeasures", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LinkMeasures_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LinkMeasures_LinkMeasures_CorrectsId",
                        column: x => x.CorrectsId,
                        principalTable: "LinkMeasures",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LiftingSteps",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false),
                    AppointmentId = table.Column<int>(type: "INTEGER", nullable: true),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    Closes = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAt = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LiftingSteps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LiftingSteps_Appointments_AppointmentId",
                        column: x => x.AppointmentId,
                        principalTable: "Appointments",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LiftingSteps_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Examinations",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    On = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Examiner = table.Column<string>(type: "TEXT", nullable: false),
                    ExaminerAddress = table.Column<string>(type: "TEXT", nullable: false),
                    AppointmentId = table.Column<int>(type: "INTEGER", nullable: true),
                    Occasion = table.Column<int>(type: "INTEGER", nullable: false),
                    Result = table.Column<int>(type: "INTEGER", nullable: false),
                    Points = table.Column<string>(type: "TEXT", nullable: false),
                    Remarks = table.Column<string>(type: "TEXT", nullable: false),
                    RemedyBy = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    NextOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ReportNumber = table.Column<string>(type: "TEXT", nullable: false),
                    FileId = table.Column<long>(type: "INTEGER", nullable: true),
                    CounterH = table.Column<double>(type: "REAL", nullable: true),
                    CorrectsId = table.Column<long>(type: "INTEGER", nullable: true),
                    Withdraws = table.Column<bool>(type: "INTEGER", nullable: false),
                    ToldBy = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAt = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Examinations", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Examinations_Appointments_AppointmentId",
                        column: x => x.AppointmentId,
                        principalTable: "Appointments",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Examinations_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Examinations_Examinations_CorrectsId",
                        column: x => x.CorrectsId,
                        principalTable: "Examinations",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Examinations_LiftingFiles_FileId",
                        column: x => x.FileId,
                        principalTable: "LiftingFiles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LiftingCards",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false),
                    FittedAt = table.Column<long>(type: "INTEGER", nullable: true),
                    Use = table.Column<int>(type: "INTEGER", nullable: false),
                    WorkingLoadKg = table.Column<double>(type: "REAL", nullable: true),
                    WorkingLoadOf = table.Column<string>(type: "TEXT", nullable: false),
                    CertificateNumber = table.Column<string>(type: "TEXT", nullable: false),
                    CertificateOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    CertificateFileId = table.Column<long>(type: "INTEGER", nullable: true),
                    ProofTestOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ProofLoadKg = table.Column<double>(type: "REAL", nullable: true),
                    ProofTestNumber = table.Column<string>(type: "TEXT", nullable: false),
                    Maker = table.Column<string>(type: "TEXT", nullable: false),
                    Standard = table.Column<string>(type: "TEXT", nullable: false),
                    Grade = table.Column<string>(type: "TEXT", nullable: false),
                    TraceMark = table.Column<string>(type: "TEXT", nullable: false),
                    ChainSet = table.Column<string>(type: "TEXT", nullable: false),
                    Region = table.Column<int>(type: "INTEGER", nullable: false),
                    LiftsPersons = table.Column<bool>(type: "INTEGER", nullable: false),
                    HeavyUse = table.Column<bool>(type: "INTEGER", nullable: false),
                    LiftsPerWeek = table.Column<int>(type: "INTEGER", nullable: true),
                    ExaminationMonths = table.Column<int>(type: "INTEGER", nullable: true),
                    WrittenScheme = table.Column<string>(type: "TEXT", nullable: false),
                    WrittenSchemeFileId = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LiftingCards", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LiftingCards_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LiftingCards_LiftingFiles_CertificateFileId",
                        column: x => x.CertificateFileId,
                        principalTable: "LiftingFiles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LiftingCards_LiftingFiles_WrittenSchemeFileId",
                        column: x => x.WrittenSchemeFileId,
                        principalTable: "LiftingFiles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Appointments_EndsId",
                table: "Appointments",
                column: "EndsId");

            migrationBuilder.CreateIndex(
                name: "IX_Appointments_Person",
                table: "Appointments",
                column: "Person");

            migrationBuilder.CreateIndex(
                name: "IX_Examinations_AppointmentId",
                table: "Examinations",
                column: "AppointmentId");

            migrationBuilder.CreateIndex(
                name: "IX_Examinations_ChainId",
                table: "Examinations",
                column: "ChainId");

            migrationBuilder.CreateIndex(
                name: "IX_Examinations_CorrectsId",
                table: "Examinations",
                column: "CorrectsId");

            migrationBuilder.CreateIndex(
                name: "IX_Examinations_FileId",
                table: "Examinations",
                column: "FileId");

            migrationBuilder.CreateIndex(
                name: "IX_Examinations_Key",
                table: "Examinations",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LiftingCards_CertificateFileId",
                table: "LiftingCards",
                column: "CertificateFileId");

            migrationBuilder.CreateIndex(
                name: "IX_LiftingCards_ChainId",
                table: "LiftingCards",
                column: "ChainId");

            migrationBuilder.CreateIndex(
                name: "IX_LiftingCards_Key",
                table: "LiftingCards",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LiftingCards_WrittenSchemeFileId",
                table: "LiftingCards",
                column: "WrittenSchemeFileId");

            migrationBuilder.CreateIndex(
                name: "IX_LiftingFiles_ChainId",
                table: "LiftingFiles",
                column: "ChainId");

            migrationBuilder.CreateIndex(
                name: "IX_LiftingFiles_Key",
                table: "LiftingFiles",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LiftingSteps_AppointmentId",
                table: "LiftingSteps",
                column: "AppointmentId");

            migrationBuilder.CreateIndex(
                name: "IX_LiftingSteps_ChainId",
                table: "LiftingSteps",
                column: "ChainId");

            migrationBuilder.CreateIndex(
                name: "IX_LiftingSteps_Key",
                table: "LiftingSteps",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LinkMeasures_ChainId",
                table: "LinkMeasures",
                column: "ChainId");

            migrationBuilder.CreateIndex(
                name: "IX_LinkMeasures_CorrectsId",
                table: "LinkMeasures",
                column: "CorrectsId");

            migrationBuilder.CreateIndex(
                name: "IX_LinkMeasures_Key",
                table: "LinkMeasures",
                column: "Key",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Examinations");

            migrationBuilder.DropTable(
                name: "LiftingCards");

            migrationBuilder.DropTable(
                name: "LiftingStates");

            migrationBuilder.DropTable(
                name: "LiftingSteps");

            migrationBuilder.DropTable(
                name: "LinkMeasures");

            migrationBuilder.DropTable(
                name: "LiftingFiles");

            migrationBuilder.DropTable(
                name: "Appointments");

            migrationBuilder.DropColumn(
                name: "LawRegion",
                table: "Plants");

            migrationBuilder.DropColumn(
                name: "LastLinkMeasureId",
                table: "Forecasts");

            migrationBuilder.DropColumn(
                name: "LinksCondition",
                table: "Forecasts");

            migrationBuilder.DropColumn(
                name: "LinksEarlyDate",
                table: "Forecasts");

            migrationBuilder.DropColumn(
                name: "LinksSaid",
                table: "Forecasts");

            migrationBuilder.DropColumn(
                name: "OutOfUseBy",
                table: "Forecasts");

            migrationBuilder.DropColumn(
                name: "LinkCount",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "LinkDiameterLimitMm",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "LinkDiameterMm",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "LinkOneLimitMm",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "LinkOuterEdges",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "LinkSeveralLimitMm",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "LinkTableSource",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "LinkUnusedSeveralMm",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "LinkUse",
                table: "Chains");

            migrationBuilder.DropColumn(
                name: "NotLiftingReason",
                table: "Chains");
        }
    }
}
