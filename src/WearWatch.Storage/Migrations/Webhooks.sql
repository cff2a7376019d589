CREATE TABLE "WebhookAddresses" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WebhookAddresses" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "Url" TEXT NOT NULL,
    "Kinds" TEXT NOT NULL,
    "Lines" TEXT NOT NULL,
    "Secret" TEXT NOT NULL,
    "FormerSecret" TEXT NOT NULL,
    "FormerUntil" INTEGER NULL,
    "IsPaused" INTEGER NOT NULL,
    "PausedFor" TEXT NOT NULL,
    "NextTryAt" INTEGER NOT NULL,
    "Failures" INTEGER NOT NULL,
    "AddedBy" TEXT NOT NULL,
    "AddedAt" INTEGER NOT NULL
);

CREATE TABLE "WebhookMarks" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WebhookMarks" PRIMARY KEY AUTOINCREMENT,
    "NoticeId" INTEGER NOT NULL,
    "EventId" INTEGER NOT NULL
);

CREATE TABLE "WebhookNotices" (
    "NoticeId" INTEGER NOT NULL CONSTRAINT "PK_WebhookNotices" PRIMARY KEY,
    "Urgent" INTEGER NOT NULL,
    "Acknowledged" INTEGER NOT NULL,
    "SnoozedUntil" INTEGER NULL,
    "AssignedTo" TEXT NOT NULL,
    CONSTRAINT "FK_WebhookNotices_Notices_NoticeId" FOREIGN KEY ("NoticeId") REFERENCES "Notices" ("Id") ON DELETE CASCADE
);

CREATE TABLE "WebhookStops" (
    "WindowId" TEXT NOT NULL CONSTRAINT "PK_WebhookStops" PRIMARY KEY,
    "Line" TEXT NOT NULL,
    "Start" INTEGER NOT NULL,
    "End" INTEGER NOT NULL,
    "Swaps" TEXT NOT NULL
);

CREATE TABLE "WebhookDeliveries" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_WebhookDeliveries" PRIMARY KEY AUTOINCREMENT,
    "AddressId" INTEGER NOT NULL,
    "EventId" TEXT NOT NULL,
    "Kind" INTEGER NOT NULL,
    "Subject" TEXT NOT NULL,
    "Body" TEXT NOT NULL,
    "WrittenAt" INTEGER NOT NULL,
    "WaitsSince" INTEGER NOT NULL,
    "State" INTEGER NOT NULL,
    "EndedAt" INTEGER NULL,
    "Tries" INTEGER NOT NULL,
    "Status" INTEGER NULL,
    "Fault" TEXT NOT NULL,
    CONSTRAINT "FK_WebhookDeliveries_WebhookAddresses_AddressId" FOREIGN KEY ("AddressId") REFERENCES "WebhookAddresses" ("Id") ON DELETE CASCADE
);

CREATE UNIQUE INDEX "IX_WebhookAddresses_Name" ON "WebhookAddresses" ("Name");

CREATE UNIQUE INDEX "IX_WebhookDeliveries_AddressId_EventId" ON "WebhookDeliveries" ("AddressId", "EventId");

CREATE INDEX "IX_WebhookDeliveries_AddressId_State_Id" ON "WebhookDeliveries" ("AddressId", "State", "Id");

CREATE INDEX "IX_WebhookDeliveries_EndedAt" ON "WebhookDeliveries" ("EndedAt");
