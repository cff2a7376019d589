ALTER TABLE "Events" ADD "NewPitches" integer;

ALTER TABLE "Events" ADD "NewTeeth" integer;
