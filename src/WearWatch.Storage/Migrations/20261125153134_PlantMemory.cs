using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace WearWatch.Storage.Migrations
{
    /// <inheritdoc />
    public partial class PlantMemory : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Calibrations",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    MadeAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Chains = table.Column<int>(type: "INTEGER", nullable: false),
                    LogEvidenceGain = table.Column<double>(type: "REAL", nullable: false),
                    Constants = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Calibrations", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Chains",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Line = table.Column<string>(type: "TEXT", nullable: false),
                    Position = table.Column<string>(type: "TEXT", nullable: false),
                    ChainType = table.Column<string>(type: "TEXT", nullable: false),
                    Family = table.Column<int>(type: "INTEGER", nullable: false),
                    PitchMm = table.Column<double>(type: "REAL", nullable: false),
                    Pitches = table.Column<int>(type: "INTEGER", nullable: true),
                    SprocketTeeth = table.Column<string>(type: "TEXT", nullable: false),
                    FittedAt = table.Column<long>(type: "INTEGER", nullable: true),
                    FittedCounterH = table.Column<double>(type: "REAL", nullable: true),
                    LimitPct = table.Column<double>(type: "REAL", nullable: true),
                    LoadRel = table.Column<double>(type: "REAL", nullable: true),
                    SpeedMS = table.Column<double>(type: "REAL", nullable: true),
                    Lubrication = table.Column<int>(type: "INTEGER", nullable: true),
                    Dust = table.Column<int>(type: "INTEGER", nullable: true),
                    LimitSetReason = table.Column<string>(type: "TEXT", nullable: false),
                    Strands = table.Column<int>(type: "INTEGER", nullable: false),
                    FixedCentres = table.Column<bool>(type: "INTEGER", nullable: false),
                    RunsInParallel = table.Column<bool>(type: "INTEGER", nullable: false),
                    Timing = table.Column<bool>(type: "INTEGER", nullable: false),
                    Positioning = table.Column<bool>(type: "INTEGER", nullable: false),
                    HighPerformance = table.Column<bool>(type: "INTEGER", nullable: false),
                    Lifts = table.Column<bool>(type: "INTEGER", nullable: false),
                    CentreDistanceMm = table.Column<double>(type: "REAL", nullable: true),
                    TakeUpTravelMm = table.Column<double>(type: "REAL", nullable: true),
                    OilingIntervalH = table.Column<double>(type: "REAL", nullable: true),
                    OilingSurroundingsFactor = table.Column<double>(type: "REAL", nullable: false),
                    Revision = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Chains", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "FleetModels",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Version = table.Column<string>(type: "TEXT", nullable: false),
                    TrainedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Chains = table.Column<int>(type: "INTEGER", nullable: false),
                    Model = table.Column<byte[]>(type: "BLOB", nullable: false),
                    Report = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FleetModels", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Imports",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    FileName = table.Column<string>(type: "TEXT", nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Taken = table.Column<int>(type: "INTEGER", nullable: false),
                    AlreadyKnown = table.Column<int>(type: "INTEGER", nullable: false),
                    Waiting = table.Column<int>(type: "INTEGER", nullable: false),
                    Refused = table.Column<int>(type: "INTEGER", nullable: false),
                    Report = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Imports", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "LineCosts",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Line = table.Column<string>(type: "TEXT", nullable: false),
                    StoppedPerHour = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LineCosts", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "PlanningCosts",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Money = table.Column<string>(type: "TEXT", nullable: false),
                    StoppedLinePerHour = table.Column<double>(type: "REAL", nullable: false),
                    StopHours = table.Column<double>(type: "REAL", nullable: false),
                    BreakdownHours = table.Column<double>(type: "REAL", nullable: false),
                    BreakdownExtra = table.Column<double>(type: "REAL", nullable: false),
                    MeanHoursToFailurePastLimit = table.Column<double>(type: "REAL", nullable: false),
                    OvertimePerHour = table.Column<double>(type: "REAL", nullable: false),
                    ExpressShare = table.Column<double>(type: "REAL", nullable: false),
                    UsualPitchPrice = table.Column<double>(type: "REAL", nullable: false),
                    SprocketPrice = table.Column<double>(type: "REAL", nullable: false),
                    HorizonWeeks = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanningCosts", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Plants",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    TimeZone = table.Column<string>(type: "TEXT", nullable: false),
                    Shifts = table.Column<string>(type: "TEXT", nullable: false),
                    Holidays = table.Column<string>(type: "TEXT", nullable: false),
                    Utilisation = table.Column<double>(type: "REAL", nullable: false),
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Plants", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Spares",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Designation = table.Column<string>(type: "TEXT", nullable: false),
                    InStock = table.Column<int>(type: "INTEGER", nullable: false),
                    LeadDays = table.Column<int>(type: "INTEGER", nullable: false),
                    PackSize = table.Column<int>(type: "INTEGER", nullable: false),
                    Price = table.Column<double>(type: "REAL", nullable: false),
                    OnOrder = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Spares", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "WindowRules",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Line = table.Column<string>(type: "TEXT", nullable: false),
                    FirstStart = table.Column<DateTime>(type: "TEXT", nullable: false),
                    LengthH = table.Column<double>(type: "REAL", nullable: false),
                    Recurrence = table.Column<string>(type: "TEXT", nullable: false),
                    Exceptions = table.Column<string>(type: "TEXT", nullable: false),
                    Crew = table.Column<string>(type: "TEXT", nullable: false),
                    CrewHours = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WindowRules", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "CardChanges",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false),
                    Field = table.Column<string>(type: "TEXT", nullable: false),
                    From = table.Column<string>(type: "TEXT", nullable: false),
                    To = table.Column<string>(type: "TEXT", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CardChanges", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CardChanges_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Events",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Fingerprint = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: true),
                    CounterBeforeH = table.Column<double>(type: "REAL", nullable: true),
                    CounterAfterH = table.Column<double>(type: "REAL", nullable: true),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    CorrectsId = table.Column<long>(type: "INTEGER", nullable: true),
                    Withdraws = table.Column<bool>(type: "INTEGER", nullable: false),
                    ToldBy = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAt = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Events", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Events_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Events_Events_CorrectsId",
                        column: x => x.CorrectsId,
                        principalTable: "Events",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Forecasts",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    MadeAt = table.Column<long>(type: "INTEGER", nullable: false),
                    IsLatest = table.Column<bool>(type: "INTEGER", nullable: false),
                    LastReadingId = table.Column<long>(type: "INTEGER", nullable: true),
                    LastEventId = table.Column<long>(type: "INTEGER", nullable: true),
                    ChainRevision = table.Column<int>(type: "INTEGER", nullable: false),
                    ModelVersion = table.Column<string>(type: "TEXT", nullable: false),
                    Life = table.Column<int>(type: "INTEGER", nullable: false),
                    ReadingsUsed = table.Column<int>(type: "INTEGER", nullable: false),
                    HoursAtLastReading = table.Column<double>(type: "REAL", nullable: false),
                    HoursNow = table.Column<double>(type: "REAL", nullable: false),
                    ElongationPct = table.Column<double>(type: "REAL", nullable: true),
                    ElongationSdPct = table.Column<double>(type: "REAL", nullable: true),
                    RatePctPer1000H = table.Column<double>(type: "REAL", nullable: false),
                    LogRateSd = table.Column<double>(type: "REAL", nullable: false),
                    LimitPct = table.Column<double>(type: "REAL", nullable: false),
                    LimitReason = table.Column<int>(type: "INTEGER", nullable: false),
                    LimitSource = table.Column<string>(type: "TEXT", nullable: false),
                    ProbabilityPassed = table.Column<double>(type: "REAL", nullable: false),
                    PercentilesH = table.Column<string>(type: "TEXT", nullable: false),
                    EarlyDate = table.Column<long>(type: "INTEGER", nullable: true),
                    MiddleDate = table.Column<long>(type: "INTEGER", nullable: true),
                    LateDate = table.Column<long>(type: "INTEGER", nullable: true),
                    Condition = table.Column<int>(type: "INTEGER", nullable: false),
                    OilingIntervalH = table.Column<double>(type: "REAL", nullable: true),
                    HoursSinceOiling = table.Column<double>(type: "REAL", nullable: true),
                    NextOilingAt = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Forecasts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Forecasts_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Notices",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Urgent = table.Column<bool>(type: "INTEGER", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false),
                    WhatToDo = table.Column<string>(type: "TEXT", nullable: false),
                    RaisedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EndedAt = table.Column<long>(type: "INTEGER", nullable: true),
                    JudgedReal = table.Column<bool>(type: "INTEGER", nullable: true),
                    JudgedBy = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Notices", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Notices_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Readings",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Fingerprint = table.Column<string>(type: "TEXT", nullable: false),
                    TakenAt = table.Column<long>(type: "INTEGER", nullable: true),
                    CounterH = table.Column<double>(type: "REAL", nullable: true),
                    Tool = table.Column<int>(type: "INTEGER", nullable: false),
                    Place = table.Column<string>(type: "TEXT", nullable: false),
                    Pitches = table.Column<int>(type: "INTEGER", nullable: false),
                    LengthMm = table.Column<double>(type: "REAL", nullable: false),
                    TemperatureC = table.Column<double>(type: "REAL", nullable: true),
                    LengthAsTold = table.Column<string>(type: "TEXT", nullable: false),
                    Standing = table.Column<int>(type: "INTEGER", nullable: false),
                    WhyWaiting = table.Column<string>(type: "TEXT", nullable: false),
                    CorrectsId = table.Column<long>(type: "INTEGER", nullable: true),
                    Withdraws = table.Column<bool>(type: "INTEGER", nullable: false),
                    ToldBy = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAt = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Readings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Readings_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Readings_Readings_CorrectsId",
                        column: x => x.CorrectsId,
                        principalTable: "Readings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SwapTerms",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    ParallelGroup = table.Column<string>(type: "TEXT", nullable: false),
                    Hours = table.Column<double>(type: "REAL", nullable: true),
                    People = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SwapTerms", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SwapTerms_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Swaps",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    WindowId = table.Column<string>(type: "TEXT", nullable: true),
                    Start = table.Column<long>(type: "INTEGER", nullable: true),
                    End = table.Column<long>(type: "INTEGER", nullable: true),
                    Placing = table.Column<int>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    DecidedBy = table.Column<string>(type: "TEXT", nullable: false),
                    DecidedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Outcome = table.Column<int>(type: "INTEGER", nullable: false),
                    OutcomeNote = table.Column<string>(type: "TEXT", nullable: false),
                    OutcomeBy = table.Column<string>(type: "TEXT", nullable: false),
                    OutcomeAt = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Swaps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Swaps_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_CardChanges_ChainId",
                table: "CardChanges",
                column: "ChainId");

            migrationBuilder.CreateIndex(
                name: "IX_Chains_Line_Position",
                table: "Chains",
                columns: new[] { "Line", "Position" });

            migrationBuilder.CreateIndex(
                name: "IX_Chains_Name",
                table: "Chains",
                column: "Name",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Events_ChainId",
                table: "Events",
                column: "ChainId");

            migrationBuilder.CreateIndex(
                name: "IX_Events_CorrectsId",
                table: "Events",
                column: "CorrectsId");

            migrationBuilder.CreateIndex(
                name: "IX_Events_Fingerprint",
                table: "Events",
                column: "Fingerprint");

            migrationBuilder.CreateIndex(
                name: "IX_Events_Key",
                table: "Events",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_FleetModels_Version",
                table: "FleetModels",
                column: "Version",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Forecasts_ChainId_IsLatest",
                table: "Forecasts",
                columns: new[] { "ChainId", "IsLatest" });

            migrationBuilder.CreateIndex(
                name: "IX_Forecasts_IsLatest_EarlyDate",
                table: "Forecasts",
                columns: new[] { "IsLatest", "EarlyDate" });

            migrationBuilder.CreateIndex(
                name: "IX_Imports_ReceivedAt",
                table: "Imports",
                column: "ReceivedAt");

            migrationBuilder.CreateIndex(
                name: "IX_LineCosts_Line",
                table: "LineCosts",
                column: "Line",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Notices_ChainId_Kind",
                table: "Notices",
                columns: new[] { "ChainId", "Kind" },
                unique: true,
                filter: "EndedAt IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Readings_ChainId",
                table: "Readings",
                column: "ChainId");

            migrationBuilder.CreateIndex(
                name: "IX_Readings_CorrectsId",
                table: "Readings",
                column: "CorrectsId");

            migrationBuilder.CreateIndex(
                name: "IX_Readings_Fingerprint",
                table: "Readings",
                column: "Fingerprint");

            migrationBuilder.CreateIndex(
                name: "IX_Readings_Key",
                table: "Readings",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Spares_Kind_Designation",
                table: "Spares",
                columns: new[] { "Kind", "Designation" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SwapTerms_ChainId",
                table: "SwapTerms",
                column: "ChainId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Swaps_ChainId",
                table: "Swaps",
                column: "ChainId",
                unique: true,
                filter: "Outcome = 0");

            migrationBuilder.CreateIndex(
                name: "IX_Swaps_Outcome_Start",
                table: "Swaps",
                columns: new[] { "Outcome", "Start" });

            migrationBuilder.CreateIndex(
                name: "IX_WindowRules_Key",
                table: "WindowRules",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_WindowRules_Line",
                table: "WindowRules",
                column: "Line");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Calibrations");

            migrationBuilder.DropTable(
                name: "CardChanges");

            migrationBuilder.DropTable(
                name: "Events");

            migrationBuilder.DropTable(
                name: "FleetModels");

            migrationBuilder.DropTable(
                name: "Forecasts");

            migrationBuilder.DropTable(
                name: "Imports");

            migrationBuilder.DropTable(
                name: "LineCosts");

            migrationBuilder.DropTable(
                name: "Notices");

            migrationBuilder.DropTable(
                name: "PlanningCosts");

            migrationBuilder.DropTable(
                name: "Plants");

            migrationBuilder.DropTable(
                name: "Readings");

            migrationBuilder.DropTable(
                name: "Spares");

            migrationBuilder.DropTable(
                name: "SwapTerms");

            migrationBuilder.DropTable(
                name: "Swaps");

            migrationBuilder.DropTable(
                name: "WindowRules");

            migrationBuilder.DropTable(
                name: "Chains");
        }
    }
}
