ALTER TABLE "People" ADD "Language" text COLLATE "C";
