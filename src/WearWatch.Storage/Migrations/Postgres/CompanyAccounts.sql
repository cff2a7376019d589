ALTER TABLE "People" ADD "Issuer" character varying(400) COLLATE "C";

ALTER TABLE "People" ADD "Subject" character varying(255) COLLATE "C";

ALTER TABLE "People" ADD "VouchedUntil" bigint;

CREATE TABLE "CompanySessions" (
    "SessionId" character varying(64) COLLATE "C" NOT NULL,
    "ProviderSession" text COLLATE "C" NOT NULL,
    "Tokens" text COLLATE "C" NOT NULL,
    "CheckedAt" bigint NOT NULL,
    CONSTRAINT "PK_CompanySessions" PRIMARY KEY ("SessionId"),
    CONSTRAINT "FK_CompanySessions_Sessions_SessionId" FOREIGN KEY ("SessionId") REFERENCES "Sessions" ("Id") ON DELETE CASCADE
);

CREATE UNIQUE INDEX "IX_People_Issuer_Subject" ON "People" ("Issuer", "Subject");

CREATE INDEX "IX_CompanySessions_CheckedAt" ON "CompanySessions" ("CheckedAt");
