ALTER TABLE "Swaps" ADD "PartsTaken" text NOT NULL DEFAULT ('[]');

ALTER TABLE "Swaps" ADD "Undone" integer NOT NULL DEFAULT 0;
