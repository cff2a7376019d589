ALTER TABLE "Swaps" ADD "DoneBy" TEXT NOT NULL DEFAULT '';

ALTER TABLE "Swaps" ADD "HoursWorked" REAL NULL;

ALTER TABLE "Swaps" ADD "PlannedHours" REAL NULL;

ALTER TABLE "Spares" ADD "Supplier" TEXT NOT NULL DEFAULT '';

ALTER TABLE "Plants" ADD "StepsSkipped" TEXT NOT NULL DEFAULT '';

ALTER TABLE "Imports" ADD "RefusedRows" TEXT NOT NULL DEFAULT '';

CREATE TABLE "ColumnNames" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_ColumnNames" PRIMARY KEY AUTOINCREMENT,
    "Kind" TEXT NOT NULL,
    "Theirs" TEXT NOT NULL,
    "Ours" TEXT NOT NULL
);

CREATE TABLE "PlanVersions" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_PlanVersions" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "SavedBy" TEXT NOT NULL,
    "SavedAt" INTEGER NOT NULL,
    "Cost" REAL NOT NULL,
    "Swaps" TEXT NOT NULL,
    "ApprovedBy" TEXT NOT NULL,
    "ApprovedAt" INTEGER NULL
);

CREATE TABLE "Purchases" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Purchases" PRIMARY KEY AUTOINCREMENT,
    "Kind" TEXT NOT NULL,
    "Designation" TEXT NOT NULL,
    "Quantity" INTEGER NOT NULL,
    "Supplier" TEXT NOT NULL,
    "Price" REAL NOT NULL,
    "IsExpress" INTEGER NOT NULL,
    "State" INTEGER NOT NULL,
    "ExpectedOn" TEXT NOT NULL,
    "ReceivedQuantity" INTEGER NOT NULL,
    "Steps" TEXT NOT NULL
);

CREATE UNIQUE INDEX "IX_ColumnNames_Kind_Theirs" ON "ColumnNames" ("Kind", "Theirs");

CREATE UNIQUE INDEX "IX_PlanVersions_Name" ON "PlanVersions" ("Name");

CREATE INDEX "IX_Purchases_State" ON "Purchases" ("State");
