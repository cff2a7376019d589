ALTER TABLE "Spares" ADD "ExpressLeadDays" integer NOT NULL DEFAULT 5;

ALTER TABLE "PlanningCosts" ADD "FrozenHours" integer NOT NULL DEFAULT 48;
