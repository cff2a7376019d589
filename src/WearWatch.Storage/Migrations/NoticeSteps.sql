ALTER TABLE "Notices" ADD "Acknowledged" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "Notices" ADD "AssignedTo" TEXT NOT NULL DEFAULT '';

ALTER TABLE "Notices" ADD "SnoozedUntil" INTEGER NULL;

CREATE TABLE "NoticeSteps" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_NoticeSteps" PRIMARY KEY AUTOINCREMENT,
    "NoticeId" INTEGER NOT NULL,
    "Key" TEXT NULL,
    "Kind" INTEGER NOT NULL,
    "At" INTEGER NOT NULL,
    "By" TEXT NOT NULL,
    "Person" TEXT NOT NULL,
    "Until" TEXT NULL,
    "Comment" TEXT NOT NULL,
    CONSTRAINT "FK_NoticeSteps_Notices_NoticeId" FOREIGN KEY ("NoticeId") REFERENCES "Notices" ("Id") ON DELETE RESTRICT
);

CREATE UNIQUE INDEX "IX_NoticeSteps_Key" ON "NoticeSteps" ("Key");

CREATE INDEX "IX_NoticeSteps_NoticeId" ON "NoticeSteps" ("NoticeId");
