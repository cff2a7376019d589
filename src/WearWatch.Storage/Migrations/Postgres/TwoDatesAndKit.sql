ALTER TABLE "Forecasts" ADD "ShortenAtPct" double precision;

ALTER TABLE "Forecasts" ADD "ShortenEarlyDate" bigint;

ALTER TABLE "Forecasts" ADD "ShortenMiddleDate" bigint;

ALTER TABLE "Forecasts" ADD "ShortenPitches" integer;

ALTER TABLE "Chains" ADD "Attachments" text COLLATE "C" NOT NULL DEFAULT '';

ALTER TABLE "Chains" ADD "GroupDifferenceMm" double precision;

ALTER TABLE "Chains" ADD "Material" integer NOT NULL DEFAULT 0;

ALTER TABLE "Chains" ADD "OilPlace" integer NOT NULL DEFAULT 0;

ALTER TABLE "Chains" ADD "StoreNumber" text COLLATE "C" NOT NULL DEFAULT '';
