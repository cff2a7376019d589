CREATE TABLE "MailWishes" (
    "PersonId" INTEGER NOT NULL CONSTRAINT "PK_MailWishes" PRIMARY KEY,
    "Address" TEXT NOT NULL,
    "Rhythm" INTEGER NOT NULL,
    "Lines" TEXT NOT NULL,
    "Kinds" TEXT NOT NULL,
    "DailyAt" TEXT NOT NULL,
    "QuietFrom" TEXT NULL,
    "QuietTo" TEXT NULL,
    "Since" INTEGER NOT NULL,
    CONSTRAINT "FK_MailWishes_People_PersonId" FOREIGN KEY ("PersonId") REFERENCES "People" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "MailedNotices" (
    "PersonId" INTEGER NOT NULL,
    "NoticeId" INTEGER NOT NULL,
    "Urgent" INTEGER NOT NULL,
    CONSTRAINT "PK_MailedNotices" PRIMARY KEY ("PersonId", "NoticeId", "Urgent"),
    CONSTRAINT "FK_MailedNotices_Notices_NoticeId" FOREIGN KEY ("NoticeId") REFERENCES "Notices" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_MailedNotices_People_PersonId" FOREIGN KEY ("PersonId") REFERENCES "People" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Mails" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Mails" PRIMARY KEY AUTOINCREMENT,
    "Key" TEXT NOT NULL,
    "PersonId" INTEGER NOT NULL,
    "Address" TEXT NOT NULL,
    "Subject" TEXT NOT NULL,
    "PlainText" TEXT NOT NULL,
    "Html" TEXT NOT NULL,
    "WrittenAt" INTEGER NOT NULL,
    "EndedAt" INTEGER NULL,
    "IsSent" INTEGER NOT NULL,
    "NextTryAt" INTEGER NOT NULL,
    "Tries" INTEGER NOT NULL,
    "Fault" TEXT NOT NULL,
    CONSTRAINT "FK_Mails_People_PersonId" FOREIGN KEY ("PersonId") REFERENCES "People" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_MailedNotices_NoticeId" ON "MailedNotices" ("NoticeId");

CREATE INDEX "IX_Mails_EndedAt_NextTryAt" ON "Mails" ("EndedAt", "NextTryAt");

CREATE UNIQUE INDEX "IX_Mails_Key" ON "Mails" ("Key");

CREATE INDEX "IX_Mails_PersonId" ON "Mails" ("PersonId");
