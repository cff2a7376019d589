DROP INDEX "IX_Readings_Key";

DROP INDEX "IX_LinkMeasures_Key";

DROP INDEX "IX_Examinations_Key";

DROP INDEX "IX_Events_Key";

ALTER TABLE "Readings" ADD "KeyOwner" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "LinkMeasures" ADD "KeyOwner" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "Imports" ADD "ToldBy" TEXT NOT NULL DEFAULT '';

ALTER TABLE "Examinations" ADD "KeyOwner" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "Events" ADD "KeyOwner" INTEGER NOT NULL DEFAULT 0;

CREATE TABLE "SecurityEvents" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_SecurityEvents" PRIMARY KEY AUTOINCREMENT,
    "At" INTEGER NOT NULL,
    "Kind" INTEGER NOT NULL,
    "Who" TEXT NOT NULL,
    "About" TEXT NOT NULL,
    "Address" TEXT NOT NULL
);

CREATE TABLE "Sessions" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Sessions" PRIMARY KEY,
    "PersonId" INTEGER NOT NULL,
    "TabletId" INTEGER NULL,
    "BegunAt" INTEGER NOT NULL,
    "SeenAt" INTEGER NOT NULL,
    "EndsAt" INTEGER NOT NULL,
    "EndedAt" INTEGER NULL,
    "Device" TEXT NOT NULL,
    "Address" TEXT NOT NULL,
    CONSTRAINT "FK_Sessions_People_PersonId" FOREIGN KEY ("PersonId") REFERENCES "People" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "SignInTries" (
    "Subject" TEXT NOT NULL CONSTRAINT "PK_SignInTries" PRIMARY KEY,
    "Tries" INTEGER NOT NULL,
    "FreeAt" INTEGER NOT NULL,
    "LastAt" INTEGER NOT NULL
);

UPDATE "Readings" SET "KeyOwner" = 1 WHERE "Key" = "Fingerprint" OR "Key" LIKE 'passes:%' OR "Key" LIKE 'telemetry:%'
    OR ("CorrectsId" IS NOT NULL AND ("Key" LIKE 'confirm:%' OR "Key" LIKE 'withdraw:%'));

UPDATE "Events" SET "KeyOwner" = 1 WHERE "Key" = "Fingerprint" OR "Key" LIKE 'swap-%' OR "Key" LIKE 'oiling:%' OR "Key" LIKE 'dry:%'
    OR ("CorrectsId" IS NOT NULL AND "Key" LIKE 'withdraw-event:%');

UPDATE "LinkMeasures" SET "KeyOwner" = 1 WHERE "ToldBy" LIKE '%.csv:%' OR ("CorrectsId" IS NOT NULL AND "Key" LIKE 'withdraw-links:%');

UPDATE "Examinations" SET "KeyOwner" = 1 WHERE "CorrectsId" IS NOT NULL AND "Key" LIKE 'withdraws examination %';

CREATE UNIQUE INDEX "IX_Readings_KeyOwner_Key" ON "Readings" ("KeyOwner", "Key");

CREATE UNIQUE INDEX "IX_LinkMeasures_KeyOwner_Key" ON "LinkMeasures" ("KeyOwner", "Key");

CREATE UNIQUE INDEX "IX_Examinations_KeyOwner_Key" ON "Examinations" ("KeyOwner", "Key");

CREATE UNIQUE INDEX "IX_Events_KeyOwner_Key" ON "Events" ("KeyOwner", "Key");

CREATE INDEX "IX_SecurityEvents_At" ON "SecurityEvents" ("At");

CREATE INDEX "IX_Sessions_PersonId" ON "Sessions" ("PersonId");

CREATE INDEX "IX_SignInTries_LastAt" ON "SignInTries" ("LastAt");
