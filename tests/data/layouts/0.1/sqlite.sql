CREATE TABLE IF NOT EXISTS "__EFMigrationsHistory" (
    "MigrationId" TEXT NOT NULL CONSTRAINT "PK___EFMigrationsHistory" PRIMARY KEY,
    "ProductVersion" TEXT NOT NULL
);


CREATE TABLE "ApiKeys" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_ApiKeys" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "Hash" TEXT NOT NULL,
    "Roles" INTEGER NOT NULL,
    "MadeBy" TEXT NOT NULL,
    "MadeAt" INTEGER NOT NULL,
    "LastUsedAt" INTEGER NULL,
    "WithdrawnAt" INTEGER NULL
);

CREATE TABLE "Calibrations" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Calibrations" PRIMARY KEY AUTOINCREMENT,
    "MadeAt" INTEGER NOT NULL,
    "Chains" INTEGER NOT NULL,
    "LogEvidenceGain" REAL NOT NULL,
    "Constants" TEXT NOT NULL
);

CREATE TABLE "Chains" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Chains" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "Line" TEXT NOT NULL,
    "Position" TEXT NOT NULL,
    "ChainType" TEXT NOT NULL,
    "Family" TEXT NOT NULL,
    "PitchMm" REAL NOT NULL,
    "Pitches" INTEGER NULL,
    "SprocketTeeth" TEXT NOT NULL,
    "FittedAt" INTEGER NULL,
    "FittedCounterH" REAL NULL,
    "Lot" TEXT NOT NULL,
    "LimitPct" REAL NULL,
    "LoadRel" REAL NULL,
    "SpeedMS" REAL NULL,
    "Lubrication" INTEGER NULL,
    "Dust" INTEGER NULL,
    "LimitSetReason" TEXT NOT NULL,
    "Strands" INTEGER NOT NULL,
    "FixedCentres" INTEGER NOT NULL,
    "RunsInParallel" INTEGER NOT NULL,
    "Timing" INTEGER NOT NULL,
    "Positioning" INTEGER NOT NULL,
    "HighPerformance" INTEGER NOT NULL,
    "Lifts" INTEGER NOT NULL,
    "CentreDistanceMm" REAL NULL,
    "TakeUpTravelMm" REAL NULL,
    "AmbientC" REAL NULL,
    "OilMethod" INTEGER NULL,
    "OilGrade" TEXT NOT NULL,
    "OilingIntervalH" REAL NULL,
    "OilingSurroundingsFactor" REAL NOT NULL,
    "Revision" INTEGER NOT NULL
);

CREATE TABLE "FleetModels" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_FleetModels" PRIMARY KEY AUTOINCREMENT,
    "Version" TEXT NOT NULL,
    "TrainedAt" INTEGER NOT NULL,
    "Chains" INTEGER NOT NULL,
    "Model" BLOB NOT NULL,
    "Report" TEXT NOT NULL
);

CREATE TABLE "Imports" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Imports" PRIMARY KEY AUTOINCREMENT,
    "FileName" TEXT NOT NULL,
    "Sha256" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    "Taken" INTEGER NOT NULL,
    "AlreadyKnown" INTEGER NOT NULL,
    "Waiting" INTEGER NOT NULL,
    "Refused" INTEGER NOT NULL,
    "Report" TEXT NOT NULL
);

CREATE TABLE "JobRuns" (
    "Job" TEXT NOT NULL CONSTRAINT "PK_JobRuns" PRIMARY KEY,
    "Worker" TEXT NOT NULL,
    "StartedAt" INTEGER NOT NULL,
    "DoneAt" INTEGER NULL,
    "Fault" TEXT NOT NULL
);

CREATE TABLE "LineCosts" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_LineCosts" PRIMARY KEY AUTOINCREMENT,
    "Line" TEXT NOT NULL,
    "StoppedPerHour" REAL NOT NULL
);

CREATE TABLE "MeasuringStudies" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_MeasuringStudies" PRIMARY KEY AUTOINCREMENT,
    "Kind" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "KeptBy" TEXT NOT NULL,
    "KeptAt" INTEGER NOT NULL,
    "Readings" TEXT NOT NULL,
    "Limit" REAL NULL
);

CREATE TABLE "OilTerms" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_OilTerms" PRIMARY KEY AUTOINCREMENT,
    "CostOfOiling" REAL NULL,
    "CostOfChain" REAL NULL,
    "ModerateDustFactor" REAL NOT NULL,
    "HeavyDustFactor" REAL NOT NULL,
    "WarmFactor" REAL NOT NULL,
    "FirstIntervalFactor" REAL NOT NULL,
    "PulsesMissed" REAL NOT NULL
);

CREATE TABLE "Parked" (
    "TelemetryId" INTEGER NOT NULL CONSTRAINT "PK_Parked" PRIMARY KEY,
    "Reason" TEXT NOT NULL,
    "At" INTEGER NOT NULL
);

CREATE TABLE "People" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_People" PRIMARY KEY AUTOINCREMENT,
    "Roles" INTEGER NOT NULL,
    "JoinedAt" INTEGER NOT NULL,
    "IsOff" INTEGER NOT NULL,
    "IsFirst" INTEGER NULL,
    "MustChoosePassword" INTEGER NOT NULL,
    "PinHash" TEXT NULL,
    "PinMisses" INTEGER NOT NULL,
    "Name" TEXT NULL,
    "NormalizedName" TEXT NULL,
    "PasswordHash" TEXT NULL,
    "SecurityStamp" TEXT NULL,
    "ConcurrencyStamp" TEXT NULL,
    "LockoutEnd" INTEGER NULL,
    "LockoutEnabled" INTEGER NOT NULL,
    "AccessFailedCount" INTEGER NOT NULL
);

CREATE TABLE "PlanningCosts" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_PlanningCosts" PRIMARY KEY AUTOINCREMENT,
    "Money" TEXT NOT NULL,
    "StoppedLinePerHour" REAL NOT NULL,
    "StopHours" REAL NOT NULL,
    "BreakdownHours" REAL NOT NULL,
    "BreakdownExtra" REAL NOT NULL,
    "MeanHoursToFailurePastLimit" REAL NOT NULL,
    "OvertimePerHour" REAL NOT NULL,
    "ExpressShare" REAL NOT NULL,
    "UsualPitchPrice" REAL NOT NULL,
    "SprocketPrice" REAL NOT NULL,
    "HorizonWeeks" INTEGER NOT NULL
);

CREATE TABLE "PlantNotices" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_PlantNotices" PRIMARY KEY AUTOINCREMENT,
    "Kind" INTEGER NOT NULL,
    "Why" TEXT NOT NULL,
    "WhatToDo" TEXT NOT NULL,
    "RaisedAt" INTEGER NOT NULL,
    "EndedAt" INTEGER NULL,
    "EndedBy" TEXT NOT NULL
);

CREATE TABLE "Plants" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Plants" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "TimeZone" TEXT NOT NULL,
    "Shifts" TEXT NOT NULL,
    "Holidays" TEXT NOT NULL,
    "Utilisation" REAL NOT NULL,
    "IsDemo" INTEGER NOT NULL,
    "Mark" TEXT NOT NULL
);

CREATE TABLE "RoundHands" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_RoundHands" PRIMARY KEY AUTOINCREMENT,
    "Key" TEXT NOT NULL,
    "Day" TEXT NOT NULL,
    "Line" TEXT NOT NULL,
    "Person" TEXT NOT NULL,
    "GivenBack" INTEGER NOT NULL,
    "At" INTEGER NOT NULL
);

CREATE TABLE "SetAside" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_SetAside" PRIMARY KEY AUTOINCREMENT,
    "Fingerprint" TEXT NOT NULL,
    "Topic" TEXT NOT NULL,
    "Payload" BLOB NOT NULL,
    "Reason" TEXT NOT NULL,
    "Times" INTEGER NOT NULL,
    "FirstAt" INTEGER NOT NULL,
    "LastAt" INTEGER NOT NULL,
    "Settlement" INTEGER NOT NULL,
    "SettledAt" INTEGER NULL,
    "SettledBy" TEXT NOT NULL
);

CREATE TABLE "SharedKeys" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_SharedKeys" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "Xml" TEXT NOT NULL
);

CREATE TABLE "Spares" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Spares" PRIMARY KEY AUTOINCREMENT,
    "Kind" TEXT NOT NULL,
    "Designation" TEXT NOT NULL,
    "InStock" INTEGER NOT NULL,
    "LeadDays" INTEGER NOT NULL,
    "PackSize" INTEGER NOT NULL,
    "Price" REAL NOT NULL,
    "OnOrder" TEXT NOT NULL
);

CREATE TABLE "Spreads" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Spreads" PRIMARY KEY AUTOINCREMENT,
    "MadeAt" INTEGER NOT NULL,
    "Lives" INTEGER NOT NULL,
    "Held" INTEGER NOT NULL,
    "EarlyExponent" REAL NOT NULL,
    "LateExponent" REAL NOT NULL
);

CREATE TABLE "SwapWorks" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_SwapWorks" PRIMARY KEY AUTOINCREMENT,
    "Family" TEXT NOT NULL,
    "Hours" REAL NOT NULL,
    "HoursPer100Pitches" REAL NOT NULL,
    "People" INTEGER NOT NULL
);

CREATE TABLE "Tablets" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Tablets" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "MarkedBy" TEXT NOT NULL,
    "MarkedAt" INTEGER NOT NULL,
    "WithdrawnAt" INTEGER NULL
);

CREATE TABLE "WindowRules" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WindowRules" PRIMARY KEY AUTOINCREMENT,
    "Key" TEXT NOT NULL,
    "Line" TEXT NOT NULL,
    "FirstStart" TEXT NOT NULL,
    "LengthH" REAL NOT NULL,
    "Recurrence" TEXT NOT NULL,
    "Exceptions" TEXT NOT NULL,
    "Crew" TEXT NOT NULL,
    "CrewHours" REAL NOT NULL
);

CREATE TABLE "CardChanges" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_CardChanges" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "At" INTEGER NOT NULL,
    "By" TEXT NOT NULL,
    "Field" TEXT NOT NULL,
    "From" TEXT NOT NULL,
    "To" TEXT NOT NULL,
    "Why" TEXT NOT NULL,
    CONSTRAINT "FK_CardChanges_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Events" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Events" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Key" TEXT NOT NULL,
    "Fingerprint" TEXT NOT NULL,
    "Kind" INTEGER NOT NULL,
    "At" INTEGER NULL,
    "CounterBeforeH" REAL NULL,
    "CounterAfterH" REAL NULL,
    "Lot" TEXT NOT NULL,
    "Broke" INTEGER NOT NULL,
    "PitchesOut" INTEGER NULL,
    "TakeUpMm" REAL NULL,
    "OilMethod" INTEGER NULL,
    "OilGrade" TEXT NOT NULL,
    "OilAmountMl" REAL NULL,
    "Note" TEXT NOT NULL,
    "CorrectsId" INTEGER NULL,
    "Withdraws" INTEGER NOT NULL,
    "ToldBy" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    CONSTRAINT "FK_Events_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Events_Events_CorrectsId" FOREIGN KEY ("CorrectsId") REFERENCES "Events" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Forecasts" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Forecasts" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "MadeAt" INTEGER NOT NULL,
    "IsLatest" INTEGER NOT NULL,
    "LastReadingId" INTEGER NULL,
    "LastEventId" INTEGER NULL,
    "ChainRevision" INTEGER NOT NULL,
    "ModelVersion" TEXT NOT NULL,
    "Life" INTEGER NOT NULL,
    "ReadingsUsed" INTEGER NOT NULL,
    "HoursAtLastReading" REAL NOT NULL,
    "HoursNow" REAL NOT NULL,
    "ElongationPct" REAL NULL,
    "ElongationSdPct" REAL NULL,
    "RatePctPer1000H" REAL NOT NULL,
    "LogRateSd" REAL NOT NULL,
    "LimitPct" REAL NOT NULL,
    "LimitReason" INTEGER NOT NULL,
    "LimitSource" TEXT NOT NULL,
    "ProbabilityPassed" REAL NOT NULL,
    "PercentilesH" TEXT NOT NULL,
    "EarlyExponent" REAL NOT NULL,
    "LateExponent" REAL NOT NULL,
    "EarlyDate" INTEGER NULL,
    "MiddleDate" INTEGER NULL,
    "LateDate" INTEGER NULL,
    "Condition" INTEGER NOT NULL,
    "OilingIntervalH" REAL NULL,
    "MeanHoursSinceOiling" REAL NULL,
    "AmbientC" REAL NULL,
    "HoursSinceOiling" REAL NULL,
    "NextOilingAt" INTEGER NULL,
    CONSTRAINT "FK_Forecasts_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Looks" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Looks" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Key" TEXT NOT NULL,
    "TakenAt" INTEGER NOT NULL,
    "Findings" TEXT NOT NULL,
    "ToldBy" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    CONSTRAINT "FK_Looks_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Notices" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Notices" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Kind" INTEGER NOT NULL,
    "Urgent" INTEGER NOT NULL,
    "Why" TEXT NOT NULL,
    "WhatToDo" TEXT NOT NULL,
    "RaisedAt" INTEGER NOT NULL,
    "EndedAt" INTEGER NULL,
    "JudgedReal" INTEGER NULL,
    "JudgedBy" TEXT NOT NULL,
    CONSTRAINT "FK_Notices_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "PassDays" (
    "ChainId" INTEGER NOT NULL,
    "Day" INTEGER NOT NULL,
    "LastAt" INTEGER NOT NULL,
    "ElongationPct" REAL NULL,
    "UncertaintyPct" REAL NULL,
    "Pitches" REAL NULL,
    "Doubt" INTEGER NULL,
    "Why" TEXT NOT NULL,
    "Bursts" INTEGER NOT NULL,
    "Passes" INTEGER NOT NULL,
    "Missed" INTEGER NOT NULL,
    "Doubled" INTEGER NOT NULL,
    "Stops" INTEGER NOT NULL,
    "UnusedBursts" INTEGER NOT NULL,
    CONSTRAINT "PK_PassDays" PRIMARY KEY ("ChainId", "Day"),
    CONSTRAINT "FK_PassDays_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Photos" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Photos" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Key" TEXT NOT NULL,
    "LookKey" TEXT NOT NULL,
    "Point" INTEGER NOT NULL,
    "Jpeg" BLOB NOT NULL,
    "ToldBy" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    CONSTRAINT "FK_Photos_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Readings" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Readings" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Key" TEXT NOT NULL,
    "Fingerprint" TEXT NOT NULL,
    "TakenAt" INTEGER NULL,
    "CounterH" REAL NULL,
    "Tool" INTEGER NOT NULL,
    "Place" TEXT NOT NULL,
    "Strand" INTEGER NULL,
    "Taut" INTEGER NOT NULL,
    "LoadN" REAL NULL,
    "Pitches" INTEGER NOT NULL,
    "LengthMm" REAL NOT NULL,
    "TemperatureC" REAL NULL,
    "LengthUncertaintyMm" REAL NULL,
    "Written" TEXT NOT NULL,
    "Unit" INTEGER NOT NULL,
    "TakeUpMm" REAL NULL,
    "Standing" INTEGER NOT NULL,
    "WhyWaiting" TEXT NOT NULL,
    "CorrectsId" INTEGER NULL,
    "Withdraws" INTEGER NOT NULL,
    "ToldBy" TEXT NOT NULL,
    "Note" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    CONSTRAINT "FK_Readings_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Readings_Readings_CorrectsId" FOREIGN KEY ("CorrectsId") REFERENCES "Readings" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "RunDays" (
    "ChainId" INTEGER NOT NULL,
    "Day" INTEGER NOT NULL,
    "From" INTEGER NOT NULL,
    "To" INTEGER NOT NULL,
    "Hours" REAL NOT NULL,
    "GapHours" REAL NOT NULL,
    "Resets" INTEGER NOT NULL,
    "Source" INTEGER NOT NULL,
    CONSTRAINT "PK_RunDays" PRIMARY KEY ("ChainId", "Day"),
    CONSTRAINT "FK_RunDays_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "SensorPairs" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_SensorPairs" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "From" INTEGER NOT NULL,
    "DistanceMm" REAL NOT NULL,
    "DistanceUncertaintyMm" REAL NOT NULL,
    "DriverTeeth" INTEGER NULL,
    "ToldBy" TEXT NOT NULL,
    CONSTRAINT "FK_SensorPairs_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "SwapTerms" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_SwapTerms" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "ParallelGroup" TEXT NOT NULL,
    "Hours" REAL NULL,
    "People" INTEGER NULL,
    "WithSprockets" INTEGER NOT NULL,
    CONSTRAINT "FK_SwapTerms_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Swaps" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Swaps" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "WindowId" TEXT NULL,
    "Start" INTEGER NULL,
    "End" INTEGER NULL,
    "Placing" INTEGER NOT NULL,
    "Note" TEXT NOT NULL,
    "DecidedBy" TEXT NOT NULL,
    "DecidedAt" INTEGER NOT NULL,
    "Outcome" INTEGER NOT NULL,
    "OutcomeNote" TEXT NOT NULL,
    "OutcomeBy" TEXT NOT NULL,
    "OutcomeAt" INTEGER NULL,
    CONSTRAINT "FK_Swaps_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Telemetry" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Telemetry" PRIMARY KEY AUTOINCREMENT,
    "MessageId" TEXT NOT NULL,
    "ChainId" INTEGER NOT NULL,
    "Kind" INTEGER NOT NULL,
    "At" INTEGER NOT NULL,
    "Value" REAL NOT NULL,
    "Payload" TEXT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    "AwaitsForwarding" INTEGER NOT NULL,
    CONSTRAINT "FK_Telemetry_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "TelemetryDays" (
    "ChainId" INTEGER NOT NULL,
    "Kind" INTEGER NOT NULL,
    "Day" INTEGER NOT NULL,
    "Count" INTEGER NOT NULL,
    "Sum" REAL NOT NULL,
    "Min" REAL NOT NULL,
    "Max" REAL NOT NULL,
    CONSTRAINT "PK_TelemetryDays" PRIMARY KEY ("ChainId", "Kind", "Day"),
    CONSTRAINT "FK_TelemetryDays_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "TelemetryHours" (
    "ChainId" INTEGER NOT NULL,
    "Kind" INTEGER NOT NULL,
    "Hour" INTEGER NOT NULL,
    "Count" INTEGER NOT NULL,
    "Sum" REAL NOT NULL,
    "Min" REAL NOT NULL,
    "Max" REAL NOT NULL,
    "Concluded" INTEGER NOT NULL,
    CONSTRAINT "PK_TelemetryHours" PRIMARY KEY ("ChainId", "Kind", "Hour"),
    CONSTRAINT "FK_TelemetryHours_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Tracks" (
    "ChainId" INTEGER NOT NULL CONSTRAINT "PK_Tracks" PRIMARY KEY,
    "Version" TEXT NOT NULL,
    "LastReadingId" INTEGER NULL,
    "State" TEXT NOT NULL,
    CONSTRAINT "FK_Tracks_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Walks" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Walks" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Place" INTEGER NOT NULL,
    CONSTRAINT "FK_Walks_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Passkeys" (
    "CredentialId" BLOB NOT NULL CONSTRAINT "PK_Passkeys" PRIMARY KEY,
    "UserId" INTEGER NOT NULL,
    "Data" TEXT NOT NULL,
    CONSTRAINT "FK_Passkeys_People_UserId" FOREIGN KEY ("UserId") REFERENCES "People" ("Id") ON DELETE RESTRICT
);

CREATE UNIQUE INDEX "IX_ApiKeys_Hash" ON "ApiKeys" ("Hash");

CREATE UNIQUE INDEX "IX_ApiKeys_Name" ON "ApiKeys" ("Name");

CREATE INDEX "IX_CardChanges_ChainId" ON "CardChanges" ("ChainId");

CREATE INDEX "IX_Chains_Line_Position" ON "Chains" ("Line", "Position");

CREATE UNIQUE INDEX "IX_Chains_Name" ON "Chains" ("Name");

CREATE INDEX "IX_Events_ChainId" ON "Events" ("ChainId");

CREATE INDEX "IX_Events_CorrectsId" ON "Events" ("CorrectsId");

CREATE INDEX "IX_Events_Fingerprint" ON "Events" ("Fingerprint");

CREATE UNIQUE INDEX "IX_Events_Key" ON "Events" ("Key");

CREATE UNIQUE INDEX "IX_FleetModels_Version" ON "FleetModels" ("Version");

CREATE INDEX "IX_Forecasts_ChainId_IsLatest" ON "Forecasts" ("ChainId", "IsLatest");

CREATE INDEX "IX_Forecasts_IsLatest_EarlyDate" ON "Forecasts" ("IsLatest", "EarlyDate");

CREATE INDEX "IX_Imports_ReceivedAt" ON "Imports" ("ReceivedAt");

CREATE UNIQUE INDEX "IX_LineCosts_Line" ON "LineCosts" ("Line");

CREATE INDEX "IX_Looks_ChainId" ON "Looks" ("ChainId");

CREATE UNIQUE INDEX "IX_Looks_Key" ON "Looks" ("Key");

CREATE UNIQUE INDEX "IX_Notices_ChainId_Kind" ON "Notices" ("ChainId", "Kind") WHERE EndedAt IS NULL;

CREATE INDEX "IX_Passkeys_UserId" ON "Passkeys" ("UserId");

CREATE UNIQUE INDEX "IX_People_IsFirst" ON "People" ("IsFirst");

CREATE UNIQUE INDEX "IX_People_NormalizedName" ON "People" ("NormalizedName");

CREATE INDEX "IX_Photos_ChainId" ON "Photos" ("ChainId");

CREATE UNIQUE INDEX "IX_Photos_Key" ON "Photos" ("Key");

CREATE INDEX "IX_Photos_LookKey" ON "Photos" ("LookKey");

CREATE UNIQUE INDEX "IX_PlantNotices_Kind" ON "PlantNotices" ("Kind") WHERE EndedAt IS NULL;

CREATE INDEX "IX_Readings_ChainId" ON "Readings" ("ChainId");

CREATE INDEX "IX_Readings_CorrectsId" ON "Readings" ("CorrectsId");

CREATE INDEX "IX_Readings_Fingerprint" ON "Readings" ("Fingerprint");

CREATE UNIQUE INDEX "IX_Readings_Key" ON "Readings" ("Key");

CREATE INDEX "IX_RoundHands_Day_Line" ON "RoundHands" ("Day", "Line");

CREATE UNIQUE INDEX "IX_RoundHands_Key" ON "RoundHands" ("Key");

CREATE INDEX "IX_SensorPairs_ChainId_From" ON "SensorPairs" ("ChainId", "From");

CREATE UNIQUE INDEX "IX_SetAside_Fingerprint" ON "SetAside" ("Fingerprint");

CREATE INDEX "IX_SetAside_Settlement_LastAt" ON "SetAside" ("Settlement", "LastAt");

CREATE UNIQUE INDEX "IX_Spares_Kind_Designation" ON "Spares" ("Kind", "Designation");

CREATE UNIQUE INDEX "IX_SwapTerms_ChainId" ON "SwapTerms" ("ChainId");

CREATE UNIQUE INDEX "IX_SwapWorks_Family" ON "SwapWorks" ("Family");

CREATE UNIQUE INDEX "IX_Swaps_ChainId" ON "Swaps" ("ChainId") WHERE Outcome = 0;

CREATE INDEX "IX_Swaps_Outcome_Start" ON "Swaps" ("Outcome", "Start");

CREATE UNIQUE INDEX "IX_Tablets_Name" ON "Tablets" ("Name");

CREATE INDEX "IX_Telemetry_At" ON "Telemetry" ("At");

CREATE INDEX "IX_Telemetry_AwaitsForwarding" ON "Telemetry" ("Id") WHERE "AwaitsForwarding";

CREATE INDEX "IX_Telemetry_ChainId_Kind_At" ON "Telemetry" ("ChainId", "Kind", "At");

CREATE UNIQUE INDEX "IX_Telemetry_MessageId" ON "Telemetry" ("MessageId");

CREATE INDEX "IX_TelemetryHours_Hour" ON "TelemetryHours" ("Hour");

CREATE INDEX "IX_TelemetryHours_ToConclude" ON "TelemetryHours" ("ChainId", "Hour") WHERE "Concluded" < "Count";

CREATE UNIQUE INDEX "IX_Walks_ChainId" ON "Walks" ("ChainId");

CREATE UNIQUE INDEX "IX_WindowRules_Key" ON "WindowRules" ("Key");

CREATE INDEX "IX_WindowRules_Line" ON "WindowRules" ("Line");

INSERT INTO "__EFMigrationsHistory" ("MigrationId", "ProductVersion")
VALUES ('20261128200949_Initial', '10.0.15');

INSERT INTO "Chains" ("Id", "Name", "Line", "Position", "ChainType", "Family", "PitchMm", "SprocketTeeth", "Lot", "LimitSetReason", "Strands",
    "FixedCentres", "RunsInParallel", "Timing", "Positioning", "HighPerformance", "Lifts", "OilGrade", "OilingSurroundingsFactor", "Revision")
VALUES (1, 'LC-01', 'Stacking', 'mast 1', 'LH1634', 'leaf', 25.4, '[]', 'B-7', '', 1, 0, 0, 0, 0, 0, 1, '', 1, 1);

INSERT INTO "Readings" ("Id", "ChainId", "Key", "Fingerprint", "CounterH", "Tool", "Place", "Taut", "Pitches", "LengthMm", "Written", "Unit", "Standing",
    "WhyWaiting", "Withdraws", "ToldBy", "Note", "ReceivedAt")
VALUES (1, 1, 'r1', 'r1', 1200, 0, '', 0, 24, 613.5, '613.5', 0, 0, '', 0, 'Ina', '', 638400000000000000);
