using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace WearWatch.Storage.Migrations
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
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Hash = table.Column<string>(type: "TEXT", nullable: false),
                    Roles = table.Column<int>(type: "INTEGER", nullable: false),
                    MadeBy = table.Column<string>(type: "TEXT", nullable: false),
                    MadeAt = table.Column<long>(type: "INTEGER", nullable: false),
                    LastUsedAt = table.Column<long>(type: "INTEGER", nullable: true),
                    WithdrawnAt = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ApiKeys", x => x.Id);
                });

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
                    Family = table.Column<string>(type: "TEXT", nullable: false),
                    PitchMm = table.Column<double>(type: "REAL", nullable: false),
                    Pitches = table.Column<int>(type: "INTEGER", nullable: true),
                    SprocketTeeth = table.Column<string>(type: "TEXT", nullable: false),
                    FittedAt = table.Column<long>(type: "INTEGER", nullable: true),
                    FittedCounterH = table.Column<double>(type: "REAL", nullable: true),
                    Lot = table.Column<string>(type: "TEXT", nullable: false),
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
                    AmbientC = table.Column<double>(type: "REAL", nullable: true),
                    OilMethod = table.Column<int>(type: "INTEGER", nullable: true),
                    OilGrade = table.Column<string>(type: "TEXT", nullable: false),
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
                name: "JobRuns",
                columns: table => new
                {
                    Job = table.Column<string>(type: "TEXT", nullable: false),
                    Worker = table.Column<string>(type: "TEXT", nullable: false),
                    StartedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    DoneAt = table.Column<long>(type: "INTEGER", nullable: true),
                    Fault = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_JobRuns", x => x.Job);
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
                name: "MeasuringStudies",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<string>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Readings = table.Column<string>(type: "TEXT", nullable: false),
                    Limit = table.Column<double>(type: "REAL", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MeasuringStudies", x => x.Id);
                });

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

            migrationBuilder.CreateTable(
                name: "Parked",
                columns: table => new
                {
                    TelemetryId = table.Column<long>(type: "INTEGER", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Parked", x => x.TelemetryId);
                });

            migrationBuilder.CreateTable(
                name: "People",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Roles = table.Column<int>(type: "INTEGER", nullable: false),
                    JoinedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    IsOff = table.Column<bool>(type: "INTEGER", nullable: false),
                    IsFirst = table.Column<bool>(type: "INTEGER", nullable: true),
                    MustChoosePassword = table.Column<bool>(type: "INTEGER", nullable: false),
                    PinHash = table.Column<string>(type: "TEXT", nullable: true),
                    PinMisses = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 80, nullable: true),
                    NormalizedName = table.Column<string>(type: "TEXT", maxLength: 80, nullable: true),
                    PasswordHash = table.Column<string>(type: "TEXT", nullable: true),
                    SecurityStamp = table.Column<string>(type: "TEXT", nullable: true),
                    ConcurrencyStamp = table.Column<string>(type: "TEXT", nullable: true),
                    LockoutEnd = table.Column<long>(type: "INTEGER", nullable: true),
                    LockoutEnabled = table.Column<bool>(type: "INTEGER", nullable: false),
                    AccessFailedCount = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_People", x => x.Id);
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
                name: "PlantNotices",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false),
                    WhatToDo = table.Column<string>(type: "TEXT", nullable: false),
                    RaisedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    EndedAt = table.Column<long>(type: "INTEGER", nullable: true),
                    EndedBy = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlantNotices", x => x.Id);
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
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false),
                    Mark = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Plants", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "RoundHands",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Line = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    GivenBack = table.Column<bool>(type: "INTEGER", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RoundHands", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "SetAside",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Fingerprint = table.Column<string>(type: "TEXT", nullable: false),
                    Topic = table.Column<string>(type: "TEXT", nullable: false),
                    Payload = table.Column<byte[]>(type: "BLOB", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    Times = table.Column<int>(type: "INTEGER", nullable: false),
                    FirstAt = table.Column<long>(type: "INTEGER", nullable: false),
                    LastAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Settlement = table.Column<int>(type: "INTEGER", nullable: false),
                    SettledAt = table.Column<long>(type: "INTEGER", nullable: true),
                    SettledBy = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SetAside", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "SharedKeys",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Xml = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SharedKeys", x => x.Id);
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
                name: "Spreads",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    MadeAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Lives = table.Column<int>(type: "INTEGER", nullable: false),
                    Held = table.Column<int>(type: "INTEGER", nullable: false),
                    EarlyExponent = table.Column<double>(type: "REAL", nullable: false),
                    LateExponent = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Spreads", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "SwapWorks",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Family = table.Column<string>(type: "TEXT", nullable: false),
                    Hours = table.Column<double>(type: "REAL", nullable: false),
                    HoursPer100Pitches = table.Column<double>(type: "REAL", nullable: false),
                    People = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SwapWorks", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Tablets",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    MarkedBy = table.Column<string>(type: "TEXT", nullable: false),
                    MarkedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    WithdrawnAt = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Tablets", x => x.Id);
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
                    Lot = table.Column<string>(type: "TEXT", nullable: false),
                    Broke = table.Column<bool>(type: "INTEGER", nullable: false),
                    PitchesOut = table.Column<int>(type: "INTEGER", nullable: true),
                    TakeUpMm = table.Column<double>(type: "REAL", nullable: true),
                    OilMethod = table.Column<int>(type: "INTEGER", nullable: true),
                    OilGrade = table.Column<string>(type: "TEXT", nullable: false),
                    OilAmountMl = table.Column<double>(type: "REAL", nullable: true),
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
                    EarlyExponent = table.Column<double>(type: "REAL", nullable: false),
                    LateExponent = table.Column<double>(type: "REAL", nullable: false),
                    EarlyDate = table.Column<long>(type: "INTEGER", nullable: true),
                    MiddleDate = table.Column<long>(type: "INTEGER", nullable: true),
                    LateDate = table.Column<long>(type: "INTEGER", nullable: true),
                    Condition = table.Column<int>(type: "INTEGER", nullable: false),
                    OilingIntervalH = table.Column<double>(type: "REAL", nullable: true),
                    MeanHoursSinceOiling = table.Column<double>(type: "REAL", nullable: true),
                    AmbientC = table.Column<double>(type: "REAL", nullable: true),
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
                name: "Looks",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    TakenAt = table.Column<long>(type: "INTEGER", nullable: false),
                    Findings = table.Column<string>(type: "TEXT", nullable: false),
                    ToldBy = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAt = table.Column<long>(type: "INTEGER", nullable: false)
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
                name: "PassDays",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Day = table.Column<long>(type: "INTEGER", nullable: false),
                    LastAt = table.Column<long>(type: "INTEGER", nullable: false),
                    ElongationPct = table.Column<double>(type: "REAL", nullable: true),
                    UncertaintyPct = table.Column<double>(type: "REAL", nullable: true),
                    Pitches = table.Column<double>(type: "REAL", nullable: true),
                    Doubt = table.Column<int>(type: "INTEGER", nullable: true),
                    Why = table.Column<string>(type: "TEXT", nullable: false),
                    Bursts = table.Column<int>(type: "INTEGER", nullable: false),
                    Passes = table.Column<int>(type: "INTEGER", nullable: false),
                    Missed = table.Column<int>(type: "INTEGER", nullable: false),
                    Doubled = table.Column<int>(type: "INTEGER", nullable: false),
                    Stops = table.Column<int>(type: "INTEGER", nullable: false),
                    UnusedBursts = table.Column<int>(type: "INTEGER", nullable: false)
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
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    LookKey = table.Column<string>(type: "TEXT", nullable: false),
                    Point = table.Column<int>(type: "INTEGER", nullable: false),
                    Jpeg = table.Column<byte[]>(type: "BLOB", nullable: false),
                    ToldBy = table.Column<string>(type: "TEXT", nullable: false),
                    ReceivedAt = table.Column<long>(type: "INTEGER", nullable: false)
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
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Key = table.Column<string>(type: "TEXT", nullable: false),
                    Fingerprint = table.Column<string>(type: "TEXT", nullable: false),
                    TakenAt = table.Column<long>(type: "INTEGER", nullable: true),
                    CounterH = table.Column<double>(type: "REAL", nullable: true),
                    Tool = table.Column<int>(type: "INTEGER", nullable: false),
                    Place = table.Column<string>(type: "TEXT", nullable: false),
                    Strand = table.Column<int>(type: "INTEGER", nullable: true),
                    Taut = table.Column<bool>(type: "INTEGER", nullable: false),
                    LoadN = table.Column<double>(type: "REAL", nullable: true),
                    Pitches = table.Column<int>(type: "INTEGER", nullable: false),
                    LengthMm = table.Column<double>(type: "REAL", nullable: false),
                    TemperatureC = table.Column<double>(type: "REAL", nullable: true),
                    LengthUncertaintyMm = table.Column<double>(type: "REAL", nullable: true),
                    Written = table.Column<string>(type: "TEXT", nullable: false),
                    Unit = table.Column<int>(type: "INTEGER", nullable: false),
                    TakeUpMm = table.Column<double>(type: "REAL", nullable: true),
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
                name: "RunDays",
                columns: table => new
                {
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Day = table.Column<long>(type: "INTEGER", nullable: false),
                    From = table.Column<long>(type: "INTEGER", nullable: false),
                    To = table.Column<long>(type: "INTEGER", nullable: false),
                    Hours = table.Column<double>(type: "REAL", nullable: false),
                    GapHours = table.Column<double>(type: "REAL", nullable: false),
                    Resets = table.Column<int>(type: "INTEGER", nullable: false),
                    Source = table.Column<int>(type: "INTEGER", nullable: false)
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
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    From = table.Column<long>(type: "INTEGER", nullable: false),
                    DistanceMm = table.Column<double>(type: "REAL", nullable: false),
                    DistanceUncertaintyMm = table.Column<double>(type: "REAL", nullable: false),
                    DriverTeeth = table.Column<int>(type: "INTEGER", nullable: true),
                    ToldBy = table.Column<string>(type: "TEXT", nullable: false)
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
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    ParallelGroup = table.Column<string>(type: "TEXT", nullable: false),
                    Hours = table.Column<double>(type: "REAL", nullable: true),
                    People = table.Column<int>(type: "INTEGER", nullable: true),
                    WithSprockets = table.Column<bool>(type: "INTEGER", nullable: false)
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

            migrationBuilder.CreateTable(
                name: "Telemetry",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    MessageId = table.Column<string>(type: "TEXT", nullable: false),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    Value = table.Column<double>(type: "REAL", nullable: false),
                    Payload = table.Column<string>(type: "TEXT", nullable: true),
                    ReceivedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    AwaitsForwarding = table.Column<bool>(type: "INTEGER", nullable: false)
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
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Day = table.Column<long>(type: "INTEGER", nullable: false),
                    Count = table.Column<long>(type: "INTEGER", nullable: false),
                    Sum = table.Column<double>(type: "REAL", nullable: false),
                    Min = table.Column<double>(type: "REAL", nullable: false),
                    Max = table.Column<double>(type: "REAL", nullable: false)
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
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Hour = table.Column<long>(type: "INTEGER", nullable: false),
                    Count = table.Column<long>(type: "INTEGER", nullable: false),
                    Sum = table.Column<double>(type: "REAL", nullable: false),
                    Min = table.Column<double>(type: "REAL", nullable: false),
                    Max = table.Column<double>(type: "REAL", nullable: false),
                    Concluded = table.Column<long>(type: "INTEGER", nullable: false)
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
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Version = table.Column<string>(type: "TEXT", nullable: false),
                    LastReadingId = table.Column<long>(type: "INTEGER", nullable: true),
                    State = table.Column<string>(type: "TEXT", nullable: false)
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
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ChainId = table.Column<int>(type: "INTEGER", nullable: false),
                    Place = table.Column<int>(type: "INTEGER", nullable: false)
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
                    CredentialId = table.Column<byte[]>(type: "BLOB", maxLength: 1024, nullable: false),
                    UserId = table.Column<int>(type: "INTEGER", nullable: false),
                    Data = table.Column<string>(type: "TEXT", nullable: false)
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
                filter: "EndedAt IS NULL");

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
                filter: "Outcome = 0");

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
