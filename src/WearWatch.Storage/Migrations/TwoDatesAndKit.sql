ALTER TABLE "Forecasts" ADD "ShortenAtPct" REAL NULL;

ALTER TABLE "Forecasts" ADD "ShortenEarlyDate" INTEGER NULL;

ALTER TABLE "Forecasts" ADD "ShortenMiddleDate" INTEGER NULL;

ALTER TABLE "Forecasts" ADD "ShortenPitches" INTEGER NULL;

ALTER TABLE "Chains" ADD "Attachments" TEXT NOT NULL DEFAULT '';

ALTER TABLE "Chains" ADD "GroupDifferenceMm" REAL NULL;

ALTER TABLE "Chains" ADD "Material" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "Chains" ADD "OilPlace" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "Chains" ADD "StoreNumber" TEXT NOT NULL DEFAULT '';
