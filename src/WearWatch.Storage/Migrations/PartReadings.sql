ALTER TABLE "Forecasts" ADD "LastPartReadingId" INTEGER NULL;

ALTER TABLE "Forecasts" ADD "SprocketCondition" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "Forecasts" ADD "TensionFrom" INTEGER NULL;

ALTER TABLE "Chains" ADD "SprocketNumber" TEXT NOT NULL DEFAULT '';

CREATE TABLE "PartReadings" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_PartReadings" PRIMARY KEY AUTOINCREMENT,
    "ChainId" INTEGER NOT NULL,
    "Key" TEXT NOT NULL,
    "KeyOwner" INTEGER NOT NULL,
    "TakenAt" INTEGER NULL,
    "CounterH" REAL NULL,
    "Part" INTEGER NOT NULL,
    "Place" TEXT NOT NULL,
    "Mm" REAL NOT NULL,
    "NewMm" REAL NULL,
    "LimitMm" REAL NULL,
    "LimitSource" TEXT NOT NULL,
    "Written" TEXT NOT NULL,
    "CorrectsId" INTEGER NULL,
    "Withdraws" INTEGER NOT NULL,
    "Note" TEXT NOT NULL,
    "ToldBy" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    CONSTRAINT "FK_PartReadings_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_PartReadings_PartReadings_CorrectsId" FOREIGN KEY ("CorrectsId") REFERENCES "PartReadings" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_PartReadings_ChainId" ON "PartReadings" ("ChainId");

CREATE INDEX "IX_PartReadings_CorrectsId" ON "PartReadings" ("CorrectsId");

CREATE UNIQUE INDEX "IX_PartReadings_KeyOwner_Key" ON "PartReadings" ("KeyOwner", "Key");
