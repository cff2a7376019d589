using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace WearWatch.Storage.Migrations.Postgres
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
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    MadeAt = table.Column<long>(type: "bigint", nullable: false),
                    Chains = table.Column<int>(type: "integer", nullable: false),
                    LogEvidenceGain = table.Column<double>(type: "double precision", nullable: false),
                    Constants = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Calibrations", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Chains",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Line = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Position = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    ChainType = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Family = table.Column<int>(type: "integer", nullable: false),
                    PitchMm = table.Column<double>(type: "double precision", nullable: false),
                    Pitches = table.Column<int>(type: "integer", nullable: true),
                    SprocketTeeth = table.Column<string>(type: "text", nullable: false),
                    FittedAt = table.Column<long>(type: "bigint", nullable: true),
                    FittedCounterH = table.Column<double>(type: "double precision", nullable: true),
                    Lot = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    LimitPct = table.Column<double>(type: "double precision", nullable: true),
                    LoadRel = table.Column<double>(type: "double precision", nullable: true),
                    SpeedMS = table.Column<double>(type: "double precision", nullable: true),
                    Lubrication = table.Column<int>(type: "integer", nullable: true),
                    Dust = table.Column<int>(type: "integer", nullable: true),
                    LimitSetReason = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Strands = table.Column<int>(type: "integer", nullable: false),
                    FixedCentres = table.Column<bool>(type: "boolean", nullable: false),
                    RunsInParallel = table.Column<bool>(type: "boolean", nullable: false),
                    Timing = table.Column<bool>(type: "boolean", nullable: false),
                    Positioning = table.Column<bool>(type: "boolean", nullable: false),
                    HighPerformance = table.Column<bool>(type: "boolean", nullable: false),
                    Lifts = table.Column<bool>(type: "boolean", nullable: false),
                    CentreDistanceMm = table.Column<double>(type: "double precision", nullable: true),
                    TakeUpTravelMm = table.Column<double>(type: "double precision", nullable: true),
                    OilingIntervalH = table.Column<double>(type: "double precision", nullable: true),
                    OilingSurroundingsFactor = table.Column<double>(type: "double precision", nullable: false),
                    Revision = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Chains", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "FleetModels",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Version = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    TrainedAt = table.Column<long>(type: "bigint", nullable: false),
                    Chains = table.Column<int>(type: "integer", nullable: false),
                    Model = table.Column<byte[]>(type: "bytea", nullable: false),
                    Report = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FleetModels", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Imports",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    FileName = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Sha256 = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    ReceivedAt = table.Column<long>(type: "bigint", nullable: false),
                    Taken = table.Column<int>(type: "integer", nullable: false),
                    AlreadyKnown = table.Column<int>(type: "integer", nullable: false),
                    Waiting = table.Column<int>(type: "integer", nullable: false),
                    Refused = table.Column<int>(type: "integer", nullable: false),
                    Report = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Imports", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "LineCosts",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Line = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    StoppedPerHour = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LineCosts", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "PlanningCosts",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Money = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    StoppedLinePerHour = table.Column<double>(type: "double precision", nullable: false),
                    StopHours = table.Column<double>(type: "double precision", nullable: false),
                    BreakdownHours = table.Column<double>(type: "double precision", nullable: false),
                    BreakdownExtra = table.Column<double>(type: "double precision", nullable: false),
                    MeanHoursToFailurePastLimit = table.Column<double>(type: "double precision", nullable: false),
                    OvertimePerHour = table.Column<double>(type: "double precision", nullable: false),
                    ExpressShare = table.Column<double>(type: "double precision", nullable: false),
                    UsualPitchPrice = table.Column<double>(type: "double precision", nullable: false),
                    SprocketPrice = table.Column<double>(type: "double precision", nullable: false),
                    HorizonWeeks = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanningCosts", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Plants",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    TimeZone = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Shifts = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Holidays = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Utilisation = table.Column<double>(type: "double precision", nullable: false),
                    IsDemo = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Plants", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "SetAside",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Fingerprint = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Topic = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Payload = table.Column<byte[]>(type: "bytea", nullable: false),
                    Reason = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Times = table.Column<int>(type: "integer", nullable: false),
                    FirstAt = table.Column<long>(type: "bigint", nullable: false),
                    LastAt = table.Column<long>(type: "bigint", nullable: false),
                    Settlement = table.Column<int>(type: "integer", nullable: false),
                    SettledAt = table.Column<long>(type: "bigint", nullable: true),
                    SettledBy = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SetAside", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Spares",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Kind = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Designation = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    InStock = table.Column<int>(type: "integer", nullable: false),
                    LeadDays = table.Column<int>(type: "integer", nullable: false),
                    PackSize = table.Column<int>(type: "integer", nullable: false),
                    Price = table.Column<double>(type: "double precision", nullable: false),
                    OnOrder = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Spares", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "WindowRules",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Key = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Line = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    FirstStart = table.Column<DateTime>(type: "timestamp without time zone", nullable: false),
                    LengthH = table.Column<double>(type: "double precision", nullable: false),
                    Recurrence = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Exceptions = table.Column<string>(type: "text", nullable: false),
                    Crew = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    CrewHours = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WindowRules", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "CardChanges",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    At = table.Column<long>(type: "bigint", nullable: false),
                    By = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Field = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    From = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    To = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Why = table.Column<string>(type: "text", nullable: false, collation: "C")
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
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Key = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Fingerprint = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Kind = table.Column<int>(type: "integer", nullable: false),
                    At = table.Column<long>(type: "bigint", nullable: true),
                    CounterBeforeH = table.Column<double>(type: "double precision", nullable: true),
                    CounterAfterH = table.Column<double>(type: "double precision", nullable: true),
                    Lot = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Note = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    CorrectsId = table.Column<long>(type: "bigint", nullable: true),
                    Withdraws = table.Column<bool>(type: "boolean", nullable: false),
                    ToldBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    ReceivedAt = table.Column<long>(type: "bigint", nullable: false)
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
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    MadeAt = table.Column<long>(type: "bigint", nullable: false),
                    IsLatest = table.Column<bool>(type: "boolean", nullable: false),
                    LastReadingId = table.Column<long>(type: "bigint", nullable: true),
                    LastEventId = table.Column<long>(type: "bigint", nullable: true),
                    ChainRevision = table.Column<int>(type: "integer", nullable: false),
                    ModelVersion = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Life = table.Column<int>(type: "integer", nullable: false),
                    ReadingsUsed = table.Column<int>(type: "integer", nullable: false),
                    HoursAtLastReading = table.Column<double>(type: "double precision", nullable: false),
                    HoursNow = table.Column<double>(type: "double precision", nullable: false),
                    ElongationPct = table.Column<double>(type: "double precision", nullable: true),
                    ElongationSdPct = table.Column<double>(type: "double precision", nullable: true),
                    RatePctPer1000H = table.Column<double>(type: "double precision", nullable: false),
                    LogRateSd = table.Column<double>(type: "double precision", nullable: false),
                    LimitPct = table.Column<double>(type: "double precision", nullable: false),
                    LimitReason = table.Column<int>(type: "integer", nullable: false),
                    LimitSource = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    ProbabilityPassed = table.Column<double>(type: "double precision", nullable: false),
                    PercentilesH = table.Column<string>(type: "text", nullable: false),
                    EarlyDate = table.Column<long>(type: "bigint", nullable: true),
                    MiddleDate = table.Column<long>(type: "bigint", nullable: true),
                    LateDate = table.Column<long>(type: "bigint", nullable: true),
                    Condition = table.Column<int>(type: "integer", nullable: false),
                    OilingIntervalH = table.Column<double>(type: "double precision", nullable: true),
                    HoursSinceOiling = table.Column<double>(type: "double precision", nullable: true),
                    NextOilingAt = table.Column<long>(type: "bigint", nullable: true)
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
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Kind = table.Column<int>(type: "integer", nullable: false),
                    Urgent = table.Column<bool>(type: "boolean", nullable: false),
                    Why = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    WhatToDo = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    RaisedAt = table.Column<long>(type: "bigint", nullable: false),
                    EndedAt = table.Column<long>(type: "bigint", nullable: true),
                    JudgedReal = table.Column<bool>(type: "boolean", nullable: true),
                    JudgedBy = table.Column<string>(type: "text", nullable: false, collation: "C")
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
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Key = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Fingerprint = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    TakenAt = table.Column<long>(type: "bigint", nullable: true),
                    CounterH = table.Column<double>(type: "double precision", nullable: true),
                    Tool = table.Column<int>(type: "integer", nullable: false),
                    Place = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Strand = table.Column<int>(type: "integer", nullable: true),
                    Taut = table.Column<bool>(type: "boolean", nullable: false),
                    LoadN = table.Column<double>(type: "double precision", nullable: true),
                    Pitches = table.Column<int>(type: "integer", nullable: false),
                    LengthMm = table.Column<double>(type: "double precision", nullable: false),
                    TemperatureC = table.Column<double>(type: "double precision", nullable: true),
                    LengthAsTold = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Standing = table.Column<int>(type: "integer", nullable: false),
                    WhyWaiting = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    CorrectsId = table.Column<long>(type: "bigint", nullable: true),
                    Withdraws = table.Column<bool>(type: "boolean", nullable: false),
                    ToldBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Note = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    ReceivedAt = table.Column<long>(type: "bigint", nullable: false)
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
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    ParallelGroup = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Hours = table.Column<double>(type: "double precision", nullable: true),
                    People = table.Column<int>(type: "integer", nullable: true)
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
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    WindowId = table.Column<string>(type: "text", nullable: true, collation: "C"),
                    Start = table.Column<long>(type: "bigint", nullable: true),
                    End = table.Column<long>(type: "bigint", nullable: true),
                    Placing = table.Column<int>(type: "integer", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    DecidedBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    DecidedAt = table.Column<long>(type: "bigint", nullable: false),
                    Outcome = table.Column<int>(type: "integer", nullable: false),
                    OutcomeNote = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    OutcomeBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    OutcomeAt = table.Column<long>(type: "bigint", nullable: true)
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

            migrationBuilder.CreateTable(
                name: "Telemetry",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    MessageId = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Kind = table.Column<int>(type: "integer", nullable: false),
                    At = table.Column<long>(type: "bigint", nullable: false),
                    Value = table.Column<double>(type: "double precision", nullable: false),
                    Payload = table.Column<string>(type: "text", nullable: true, collation: "C"),
                    ReceivedAt = table.Column<long>(type: "bigint", nullable: false),
                    AwaitsForwarding = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Telemetry", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Telemetry_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TelemetryDays",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Kind = table.Column<int>(type: "integer", nullable: false),
                    Day = table.Column<long>(type: "bigint", nullable: false),
                    Count = table.Column<long>(type: "bigint", nullable: false),
                    Sum = table.Column<double>(type: "double precision", nullable: false),
                    Min = table.Column<double>(type: "double precision", nullable: false),
                    Max = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TelemetryDays", x => new { x.ChainId, x.Kind, x.Day });
                    table.ForeignKey(
                        name: "FK_TelemetryDays_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TelemetryHours",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Kind = table.Column<int>(type: "integer", nullable: false),
                    Hour = table.Column<long>(type: "bigint", nullable: false),
                    Count = table.Column<long>(type: "bigint", nullable: false),
                    Sum = table.Column<double>(type: "double precision", nullable: false),
                    Min = table.Column<double>(type: "double precision", nullable: false),
                    Max = table.Column<double>(type: "double precision", nullable: false),
                    Concluded = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TelemetryHours", x => new { x.ChainId, x.Kind, x.Hour });
                    table.ForeignKey(
                        name: "FK_TelemetryHours_Chains_ChainId",
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
                filter: "\"EndedAt\" IS NULL");

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
                name: "IX_SetAside_Fingerprint",
                table: "SetAside",
                column: "Fingerprint",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SetAside_Settlement_LastAt",
                table: "SetAside",
                columns: new[] { "Settlement", "LastAt" });

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
                filter: "\"Outcome\" = 0");

            migrationBuilder.CreateIndex(
                name: "IX_Swaps_Outcome_Start",
                table: "Swaps",
                columns: new[] { "Outcome", "Start" });

            migrationBuilder.CreateIndex(
                name: "IX_Telemetry_At",
                table: "Telemetry",
                column: "At");

            migrationBuilder.CreateIndex(
                name: "IX_Telemetry_AwaitsForwarding",
                table: "Telemetry",
                column: "Id",
                filter: "\"AwaitsForwarding\"");

            migrationBuilder.CreateIndex(
                name: "IX_Telemetry_ChainId_Kind_At",
                table: "Telemetry",
                columns: new[] { "ChainId", "Kind", "At" });

            migrationBuilder.CreateIndex(
                name: "IX_Telemetry_MessageId",
                table: "Telemetry",
                column: "MessageId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_TelemetryHours_Hour",
                table: "TelemetryHours",
                column: "Hour");

            migrationBuilder.CreateIndex(
                name: "IX_TelemetryHours_ToConclude",
                table: "TelemetryHours",
                columns: new[] { "ChainId", "Hour" },
                filter: "\"Concluded\" < \"Count\"");

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
                name: "SetAside");

            migrationBuilder.DropTable(
                name: "Spares");

            migrationBuilder.DropTable(
                name: "SwapTerms");

            migrationBuilder.DropTable(
                name: "Swaps");

            migrationBuilder.DropTable(
                name: "Telemetry");

            migrationBuilder.DropTable(
                name: "TelemetryDays");

            migrationBuilder.DropTable(
                name: "TelemetryHours");

            migrationBuilder.DropTable(
                name: "WindowRules");

            migrationBuilder.DropTable(
                name: "Chains");
        }
    }
}
