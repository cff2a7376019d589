using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace WearWatch.Storage.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Initial : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "ApiKeys",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Hash = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Roles = table.Column<int>(type: "integer", nullable: false),
                    MadeBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    MadeAt = table.Column<long>(type: "bigint", nullable: false),
                    LastUsedAt = table.Column<long>(type: "bigint", nullable: true),
                    WithdrawnAt = table.Column<long>(type: "bigint", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ApiKeys", x => x.Id);
                });

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
                    Family = table.Column<string>(type: "text", nullable: false, collation: "C"),
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
                    AmbientC = table.Column<double>(type: "double precision", nullable: true),
                    OilMethod = table.Column<int>(type: "integer", nullable: true),
                    OilGrade = table.Column<string>(type: "text", nullable: false, collation: "C"),
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
                name: "MeasuringStudies",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Kind = table.Column<int>(type: "integer", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    KeptBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    KeptAt = table.Column<long>(type: "bigint", nullable: false),
                    Readings = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Limit = table.Column<double>(type: "double precision", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MeasuringStudies", x => x.Id);
                });

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

            migrationBuilder.CreateTable(
                name: "Parked",
                columns: table => new
                {
                    TelemetryId = table.Column<long>(type: "bigint", nullable: false),
                    Reason = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    At = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Parked", x => x.TelemetryId);
                });

            migrationBuilder.CreateTable(
                name: "People",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Roles = table.Column<int>(type: "integer", nullable: false),
                    JoinedAt = table.Column<long>(type: "bigint", nullable: false),
                    IsOff = table.Column<bool>(type: "boolean", nullable: false),
                    IsFirst = table.Column<bool>(type: "boolean", nullable: true),
                    MustChoosePassword = table.Column<bool>(type: "boolean", nullable: false),
                    PinHash = table.Column<string>(type: "text", nullable: true, collation: "C"),
                    PinMisses = table.Column<int>(type: "integer", nullable: false),
                    Name = table.Column<string>(type: "character varying(80)", maxLength: 80, nullable: true, collation: "C"),
                    NormalizedName = table.Column<string>(type: "character varying(80)", maxLength: 80, nullable: true, collation: "C"),
                    PasswordHash = table.Column<string>(type: "text", nullable: true, collation: "C"),
                    SecurityStamp = table.Column<string>(type: "text", nullable: true, collation: "C"),
                    ConcurrencyStamp = table.Column<string>(type: "text", nullable: true, collation: "C"),
                    LockoutEnd = table.Column<long>(type: "bigint", nullable: true),
                    LockoutEnabled = table.Column<bool>(type: "boolean", nullable: false),
                    AccessFailedCount = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_People", x => x.Id);
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
                name: "PlantNotices",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Kind = table.Column<int>(type: "integer", nullable: false),
                    Why = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    WhatToDo = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    RaisedAt = table.Column<long>(type: "bigint", nullable: false),
                    EndedAt = table.Column<long>(type: "bigint", nullable: true),
                    EndedBy = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlantNotices", x => x.Id);
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
                    IsDemo = table.Column<bool>(type: "boolean", nullable: false),
                    Mark = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Plants", x => x.Id);
                });

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
                name: "Spreads",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    MadeAt = table.Column<long>(type: "bigint", nullable: false),
                    Lives = table.Column<int>(type: "integer", nullable: false),
                    Held = table.Column<int>(type: "integer", nullable: false),
                    EarlyExponent = table.Column<double>(type: "double precision", nullable: false),
                    LateExponent = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Spreads", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "SwapWorks",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Family = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Hours = table.Column<double>(type: "double precision", nullable: false),
                    HoursPer100Pitches = table.Column<double>(type: "double precision", nullable: false),
                    People = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SwapWorks", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Tablets",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Name = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    MarkedBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    MarkedAt = table.Column<long>(type: "bigint", nullable: false),
                    WithdrawnAt = table.Column<long>(type: "bigint", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Tablets", x => x.Id);
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
                    Broke = table.Column<bool>(type: "boolean", nullable: false),
                    PitchesOut = table.Column<int>(type: "integer", nullable: true),
                    TakeUpMm = table.Column<double>(type: "double precision", nullable: true),
                    OilMethod = table.Column<int>(type: "integer", nullable: true),
                    OilGrade = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    OilAmountMl = table.Column<double>(type: "double precision", nullable: true),
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
                    EarlyExponent = table.Column<double>(type: "double precision", nullable: false),
                    LateExponent = table.Column<double>(type: "double precision", nullable: false),
                    EarlyDate = table.Column<long>(type: "bigint", nullable: true),
                    MiddleDate = table.Column<long>(type: "bigint", nullable: true),
                    LateDate = table.Column<long>(type: "bigint", nullable: true),
                    Condition = table.Column<int>(type: "integer", nullable: false),
                    OilingIntervalH = table.Column<double>(type: "double precision", nullable: true),
                    MeanHoursSinceOiling = table.Column<double>(type: "double precision", nullable: true),
                    AmbientC = table.Column<double>(type: "double precision", nullable: true),
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
                name: "Looks",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Key = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    TakenAt = table.Column<long>(type: "bigint", nullable: false),
                    Findings = table.Column<string>(type: "text", nullable: false),
                    ToldBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    ReceivedAt = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Looks", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Looks_Chains_ChainId",
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
                name: "PassDays",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Day = table.Column<long>(type: "bigint", nullable: false),
                    LastAt = table.Column<long>(type: "bigint", nullable: false),
                    ElongationPct = table.Column<double>(type: "double precision", nullable: true),
                    UncertaintyPct = table.Column<double>(type: "double precision", nullable: true),
                    Pitches = table.Column<double>(type: "double precision", nullable: true),
                    Doubt = table.Column<int>(type: "integer", nullable: true),
                    Why = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Bursts = table.Column<int>(type: "integer", nullable: false),
                    Passes = table.Column<int>(type: "integer", nullable: false),
                    Missed = table.Column<int>(type: "integer", nullable: false),
                    Doubled = table.Column<int>(type: "integer", nullable: false),
                    Stops = table.Column<int>(type: "integer", nullable: false),
                    UnusedBursts = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PassDays", x => new { x.ChainId, x.Day });
                    table.ForeignKey(
                        name: "FK_PassDays_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Photos",
                columns: table => new
                {
                    Id = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Key = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    LookKey = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Point = table.Column<int>(type: "integer", nullable: false),
                    Jpeg = table.Column<byte[]>(type: "bytea", nullable: false),
                    ToldBy = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    ReceivedAt = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Photos", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Photos_Chains_ChainId",
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
                    LengthUncertaintyMm = table.Column<double>(type: "double precision", nullable: true),
                    Written = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    Unit = table.Column<int>(type: "integer", nullable: false),
                    TakeUpMm = table.Column<double>(type: "double precision", nullable: true),
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
                name: "RunDays",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Day = table.Column<long>(type: "bigint", nullable: false),
                    From = table.Column<long>(type: "bigint", nullable: false),
                    To = table.Column<long>(type: "bigint", nullable: false),
                    Hours = table.Column<double>(type: "double precision", nullable: false),
                    GapHours = table.Column<double>(type: "double precision", nullable: false),
                    Resets = table.Column<int>(type: "integer", nullable: false),
                    Source = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RunDays", x => new { x.ChainId, x.Day });
                    table.ForeignKey(
                        name: "FK_RunDays_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SensorPairs",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    From = table.Column<long>(type: "bigint", nullable: false),
                    DistanceMm = table.Column<double>(type: "double precision", nullable: false),
                    DistanceUncertaintyMm = table.Column<double>(type: "double precision", nullable: false),
                    DriverTeeth = table.Column<int>(type: "integer", nullable: true),
                    ToldBy = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SensorPairs", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SensorPairs_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
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
                    People = table.Column<int>(type: "integer", nullable: true),
                    WithSprockets = table.Column<bool>(type: "boolean", nullable: false)
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

            migrationBuilder.CreateTable(
                name: "Tracks",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "integer", nullable: false),
                    Version = table.Column<string>(type: "text", nullable: false, collation: "C"),
                    LastReadingId = table.Column<long>(type: "bigint", nullable: true),
                    State = table.Column<string>(type: "text", nullable: false, collation: "C")
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Tracks", x => x.ChainId);
                    table.ForeignKey(
                        name: "FK_Tracks_Chains_ChainId",
                        column: x => x.ChainId,
                        principalTable: "Chains",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
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

            migrationBuilder.CreateTable(
                name: "Passkeys",
                columns: table => new
                {
                    CredentialId = table.Column<byte[]>(type: "bytea", maxLength: 1024, nullable: false),
                    UserId = table.Column<int>(type: "integer", nullable: false),
                    Data = table.Column<string>(type: "jsonb", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Passkeys", x => x.CredentialId);
                    table.ForeignKey(
                        name: "FK_Passkeys_People_UserId",
                        column: x => x.UserId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_ApiKeys_Hash",
                table: "ApiKeys",
                column: "Hash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ApiKeys_Name",
                table: "ApiKeys",
                column: "Name",
                unique: true);

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
                name: "IX_Looks_ChainId",
                table: "Looks",
                column: "ChainId");

            migrationBuilder.CreateIndex(
                name: "IX_Looks_Key",
                table: "Looks",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Notices_ChainId_Kind",
                table: "Notices",
                columns: new[] { "ChainId", "Kind" },
                unique: true,
                filter: "\"EndedAt\" IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Passkeys_UserId",
                table: "Passkeys",
                column: "UserId");

            migrationBuilder.CreateIndex(
                name: "IX_People_IsFirst",
                table: "People",
                column: "IsFirst",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_People_NormalizedName",
                table: "People",
                column: "NormalizedName",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Photos_ChainId",
                table: "Photos",
                column: "ChainId");

            migrationBuilder.CreateIndex(
                name: "IX_Photos_Key",
                table: "Photos",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Photos_LookKey",
                table: "Photos",
                column: "LookKey");

            migrationBuilder.CreateIndex(
                name: "IX_PlantNotices_Kind",
                table: "PlantNotices",
                column: "Kind",
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
                name: "IX_RoundHands_Day_Line",
                table: "RoundHands",
                columns: new[] { "Day", "Line" });

            migrationBuilder.CreateIndex(
                name: "IX_RoundHands_Key",
                table: "RoundHands",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SensorPairs_ChainId_From",
                table: "SensorPairs",
                columns: new[] { "ChainId", "From" });

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
                name: "IX_SwapWorks_Family",
                table: "SwapWorks",
                column: "Family",
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
                name: "IX_Tablets_Name",
                table: "Tablets",
                column: "Name",
                unique: true);

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
                name: "IX_Walks_ChainId",
                table: "Walks",
                column: "ChainId",
                unique: true);

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
                name: "ApiKeys");

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
                name: "JobRuns");

            migrationBuilder.DropTable(
                name: "LineCosts");

            migrationBuilder.DropTable(
                name: "Looks");

            migrationBuilder.DropTable(
                name: "MeasuringStudies");

            migrationBuilder.DropTable(
                name: "Notices");

            migrationBuilder.DropTable(
                name: "OilTerms");

            migrationBuilder.DropTable(
                name: "Parked");

            migrationBuilder.DropTable(
                name: "PassDays");

            migrationBuilder.DropTable(
                name: "Passkeys");

            migrationBuilder.DropTable(
                name: "Photos");

            migrationBuilder.DropTable(
                name: "PlanningCosts");

            migrationBuilder.DropTable(
                name: "PlantNotices");

            migrationBuilder.DropTable(
                name: "Plants");

            migrationBuilder.DropTable(
                name: "Readings");

            migrationBuilder.DropTable(
                name: "RoundHands");

            migrationBuilder.DropTable(
                name: "RunDays");

            migrationBuilder.DropTable(
                name: "SensorPairs");

            migrationBuilder.DropTable(
                name: "SetAside");

            migrationBuilder.DropTable(
                name: "SharedKeys");

            migrationBuilder.DropTable(
                name: "Spares");

            migrationBuilder.DropTable(
                name: "Spreads");

            migrationBuilder.DropTable(
                name: "SwapTerms");

            migrationBuilder.DropTable(
                name: "SwapWorks");

            migrationBuilder.DropTable(
                name: "Swaps");

            migrationBuilder.DropTable(
                name: "Tablets");

            migrationBuilder.DropTable(
                name: "Telemetry");

            migrationBuilder.DropTable(
                name: "TelemetryDays");

            migrationBuilder.DropTable(
                name: "TelemetryHours");

            migrationBuilder.DropTable(
                name: "Tracks");

            migrationBuilder.DropTable(
                name: "Walks");

            migrationBuilder.DropTable(
                name: "WindowRules");

            migrationBuilder.DropTable(
                name: "People");

            migrationBuilder.DropTable(
                name: "Chains");
        }
    }
}
