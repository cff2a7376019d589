CREATE TABLE "WorkOrderReports" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WorkOrderReports" PRIMARY KEY AUTOINCREMENT,
    "Key" TEXT NOT NULL,
    "KeyOwner" INTEGER NOT NULL,
    "Fingerprint" TEXT NOT NULL,
    "Swap" TEXT NOT NULL,
    "SwapId" INTEGER NULL,
    "Number" TEXT NOT NULL,
    "State" INTEGER NOT NULL,
    "DoneAt" INTEGER NULL,
    "HoursWorked" REAL NULL,
    "Material" TEXT NULL,
    "Note" TEXT NOT NULL,
    "ToldBy" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    "Standing" INTEGER NOT NULL,
    "Conflict" TEXT NOT NULL,
    "SettledBy" TEXT NOT NULL,
    "SettledAt" INTEGER NULL,
    CONSTRAINT "FK_WorkOrderReports_Swaps_SwapId" FOREIGN KEY ("SwapId") REFERENCES "Swaps" ("Id") ON DELETE RESTRICT
);

CREATE UNIQUE INDEX "IX_WorkOrderReports_KeyOwner_Key" ON "WorkOrderReports" ("KeyOwner", "Key");

CREATE INDEX "IX_WorkOrderReports_Standing" ON "WorkOrderReports" ("Standing");

CREATE INDEX "IX_WorkOrderReports_SwapId" ON "WorkOrderReports" ("SwapId");
