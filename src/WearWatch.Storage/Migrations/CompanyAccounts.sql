ALTER TABLE "People" ADD "Issuer" TEXT NULL;

ALTER TABLE "People" ADD "Subject" TEXT NULL;

ALTER TABLE "People" ADD "VouchedUntil" INTEGER NULL;

CREATE TABLE "CompanySessions" (
    "SessionId" TEXT NOT NULL CONSTRAINT "PK_CompanySessions" PRIMARY KEY,
    "ProviderSession" TEXT NOT NULL,
    "Tokens" TEXT NOT NULL,
    "CheckedAt" INTEGER NOT NULL,
    CONSTRAINT "FK_CompanySessions_Sessions_SessionId" FOREIGN KEY ("SessionId") REFERENCES "Sessions" ("Id") ON DELETE CASCADE
);

CREATE UNIQUE INDEX "IX_People_Issuer_Subject" ON "People" ("Issuer", "Subject");

CREATE INDEX "IX_CompanySessions_CheckedAt" ON "CompanySessions" ("CheckedAt");
