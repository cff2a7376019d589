ALTER TABLE "Forecasts" ADD "Sooner" text;
