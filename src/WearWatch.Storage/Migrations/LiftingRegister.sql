ALTER TABLE "Plants" ADD "LawRegion" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "Forecasts" ADD "LastLinkMeasureId" INTEGER NULL;

ALTER TABLE "Forecasts" ADD "LinksCondition" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "Forecasts" ADD "LinksEarlyDate" INTEGER NULL;

ALTER TABLE "Forecasts" ADD "LinksSaid" TEXT NOT NULL DEFAULT '';

ALTER TABLE "Forecasts" ADD "OutOfUseBy" INTEGER NULL;

ALTER TABLE "Chains" ADD "LinkCount" INTEGER NULL;

ALTER TABLE "Chains" ADD "LinkDiameterLimitMm" REAL NULL;

ALTER TABLE "Chains" ADD "LinkDiameterMm" REAL NULL;

ALTER TABLE "Chains" ADD "LinkOneLimitMm" REAL NULL;

ALTER TABLE "Chains" ADD "LinkOuterEdges" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "Chains" ADD "LinkSeveralLimitMm" REAL NULL;

ALTER TABLE "Chains" ADD "LinkTableSource" TEXT NOT NULL DEFAULT '';

ALTER TABLE "Chains" ADD "LinkUnusedSeveralMm" REAL NULL;

ALTER TABLE "Chains" ADD "LinkUse" INTEGER NULL;

ALTER TABLE "Chains" ADD "NotLiftingReason" TEXT NOT NULL DEFAULT '';

CREATE TABLE "Appointments" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Appointments" PRIMARY KEY AUTOINCREMENT,
    "Person" TEXT NOT NULL,
    "Qualification" TEXT NOT NULL,
    "Line" TEXT NOT NULL,
    "Family" TEXT NOT NULL,
    "From" TEXT NOT NULL,
    "Until" TEXT NOT NULL,
    "AppointedBy" TEXT NOT NULL,
    "At" INTEGER NOT NULL,
    "EndsId" INTEGER NULL,
    "Why" TEXT NOT NULL,
    CONSTRAINT "FK_Appointments_Appointments_EndsId" FOREIGN KEY ("EndsId") REFERENCES "Appointments" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "LiftingFiles" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_LiftingFiles" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Key" TEXT NOT NULL,
    "Kind" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "ContentType" TEXT NOT NULL,
    "Content" BLOB NOT NULL,
    "ToldBy" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    CONSTRAINT "FK_LiftingFiles_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "LiftingStates" (
    "ChainId" INTEGER NOT NULL CONSTRAINT "PK_LiftingStates" PRIMARY KEY,
    "Standing" INTEGER NOT NULL,
    "Faults" TEXT NOT NULL,
    "HasCertificate" INTEGER NOT NULL,
    "LookedAt" INTEGER NULL,
    "MeasuredAt" INTEGER NULL,
    "ExaminedOn" TEXT NULL,
    "ExaminationDue" TEXT NULL,
    "RemedyBy" TEXT NULL,
    CONSTRAINT "FK_LiftingStates_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "LinkMeasures" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_LinkMeasures" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Key" TEXT NOT NULL,
    "TakenAt" INTEGER NULL,
    "CounterH" REAL NULL,
    "Place" TEXT NOT NULL,
    "Tool" INTEGER NOT NULL,
    "OneLinkMm" REAL NULL,
    "SeveralLinksMm" REAL NULL,
    "Links" INTEGER NULL,
    "OuterEdges" INTEGER NOT NULL,
    "D1Mm" REAL NULL,
    "D2Mm" REAL NULL,
    "Written" TEXT NOT NULL,
    "Standing" INTEGER NOT NULL,
    "WhyWaiting" TEXT NOT NULL,
    "CorrectsId" INTEGER NULL,
    "Withdraws" INTEGER NOT NULL,
    "Note" TEXT NOT NULL,
    "ToldBy" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    CONSTRAINT "FK_LinkMeasures_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LinkMeasures_LinkMeasures_CorrectsId" FOREIGN KEY ("CorrectsId") REFERENCES "LinkMeasures" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "LiftingSteps" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_LiftingSteps" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Key" TEXT NOT NULL,
    "Kind" INTEGER NOT NULL,
    "At" INTEGER NOT NULL,
    "By" TEXT NOT NULL,
    "AppointmentId" INTEGER NULL,
    "Reason" TEXT NOT NULL,
    "Closes" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    CONSTRAINT "FK_LiftingSteps_Appointments_AppointmentId" FOREIGN KEY ("AppointmentId") REFERENCES "Appointments" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LiftingSteps_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Examinations" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Examinations" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Key" TEXT NOT NULL,
    "On" TEXT NOT NULL,
    "Examiner" TEXT NOT NULL,
    "ExaminerAddress" TEXT NOT NULL,
    "AppointmentId" INTEGER NULL,
    "Occasion" INTEGER NOT NULL,
    "Result" INTEGER NOT NULL,
    "Points" TEXT NOT NULL,
    "Remarks" TEXT NOT NULL,
    "RemedyBy" TEXT NULL,
    "NextOn" TEXT NULL,
    "ReportNumber" TEXT NOT NULL,
    "FileId" INTEGER NULL,
    "CounterH" REAL NULL,
    "CorrectsId" INTEGER NULL,
    "Withdraws" INTEGER NOT NULL,
    "ToldBy" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    CONSTRAINT "FK_Examinations_Appointments_AppointmentId" FOREIGN KEY ("AppointmentId") REFERENCES "Appointments" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Examinations_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Examinations_Examinations_CorrectsId" FOREIGN KEY ("CorrectsId") REFERENCES "Examinations" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Examinations_LiftingFiles_FileId" FOREIGN KEY ("FileId") REFERENCES "LiftingFiles" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "LiftingCards" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_LiftingCards" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Key" TEXT NOT NULL,
    "At" INTEGER NOT NULL,
    "By" TEXT NOT NULL,
    "Why" TEXT NOT NULL,
    "FittedAt" INTEGER NULL,
    "Use" INTEGER NOT NULL,
    "WorkingLoadKg" REAL NULL,
    "WorkingLoadOf" TEXT NOT NULL,
    "CertificateNumber" TEXT NOT NULL,
    "CertificateOn" TEXT NULL,
    "CertificateFileId" INTEGER NULL,
    "ProofTestOn" TEXT NULL,
    "ProofLoadKg" REAL NULL,
    "ProofTestNumber" TEXT NOT NULL,
    "Maker" TEXT NOT NULL,
    "Standard" TEXT NOT NULL,
    "Grade" TEXT NOT NULL,
    "TraceMark" TEXT NOT NULL,
    "ChainSet" TEXT NOT NULL,
    "Region" INTEGER NOT NULL,
    "LiftsPersons" INTEGER NOT NULL,
    "HeavyUse" INTEGER NOT NULL,
    "LiftsPerWeek" INTEGER NULL,
    "ExaminationMonths" INTEGER NULL,
    "WrittenScheme" TEXT NOT NULL,
    "WrittenSchemeFileId" INTEGER NULL,
    CONSTRAINT "FK_LiftingCards_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LiftingCards_LiftingFiles_CertificateFileId" FOREIGN KEY ("CertificateFileId") REFERENCES "LiftingFiles" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LiftingCards_LiftingFiles_WrittenSchemeFileId" FOREIGN KEY ("WrittenSchemeFileId") REFERENCES "LiftingFiles" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Appointments_EndsId" ON "Appointments" ("EndsId");

CREATE INDEX "IX_Appointments_Person" ON "Appointments" ("Person");

CREATE INDEX "IX_Examinations_AppointmentId" ON "Examinations" ("AppointmentId");

CREATE INDEX "IX_Examinations_ChainId" ON "Examinations" ("ChainId");

CREATE INDEX "IX_Examinations_CorrectsId" ON "Examinations" ("CorrectsId");

CREATE INDEX "IX_Examinations_FileId" ON "Examinations" ("FileId");

CREATE UNIQUE INDEX "IX_Examinations_Key" ON "Examinations" ("Key");

CREATE INDEX "IX_LiftingCards_CertificateFileId" ON "LiftingCards" ("CertificateFileId");

CREATE INDEX "IX_LiftingCards_ChainId" ON "LiftingCards" ("ChainId");

CREATE UNIQUE INDEX "IX_LiftingCards_Key" ON "LiftingCards" ("Key");

CREATE INDEX "IX_LiftingCards_WrittenSchemeFileId" ON "LiftingCards" ("WrittenSchemeFileId");

CREATE INDEX "IX_LiftingFiles_ChainId" ON "LiftingFiles" ("ChainId");

CREATE UNIQUE INDEX "IX_LiftingFiles_Key" ON "LiftingFiles" ("Key");

CREATE INDEX "IX_LiftingSteps_AppointmentId" ON "LiftingSteps" ("AppointmentId");

CREATE INDEX "IX_LiftingSteps_ChainId" ON "LiftingSteps" ("ChainId");

CREATE UNIQUE INDEX "IX_LiftingSteps_Key" ON "LiftingSteps" ("Key");

CREATE INDEX "IX_LinkMeasures_ChainId" ON "LinkMeasures" ("ChainId");

CREATE INDEX "IX_LinkMeasures_CorrectsId" ON "LinkMeasures" ("CorrectsId");

CREATE UNIQUE INDEX "IX_LinkMeasures_Key" ON "LinkMeasures" ("Key");
