ALTER TABLE "Forecasts" ADD "Sooner" TEXT NULL;
