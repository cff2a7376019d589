ALTER TABLE "People" ADD "Language" TEXT NULL;
