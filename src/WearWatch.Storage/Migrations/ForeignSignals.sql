CREATE TABLE "HeardMessages" (
    "Topic" TEXT NOT NULL,
    "Place" INTEGER NOT NULL,
    "Payload" BLOB NOT NULL,
    "At" INTEGER NOT NULL,
    CONSTRAINT "PK_HeardMessages" PRIMARY KEY ("Topic", "Place")
);

CREATE TABLE "Listenings" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Listenings" PRIMARY KEY AUTOINCREMENT,
    "Filter" TEXT NOT NULL,
    "Until" INTEGER NOT NULL,
    "By" TEXT NOT NULL
);

CREATE TABLE "SignalMappings" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_SignalMappings" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    "Source" INTEGER NOT NULL,
    "Topic" TEXT NOT NULL,
    "ValuePath" TEXT NOT NULL,
    "TimeForm" INTEGER NOT NULL,
    "TimePath" TEXT NOT NULL,
    "UnitPath" TEXT NOT NULL,
    "Kind" INTEGER NOT NULL,
    "Scale" REAL NOT NULL,
    "Offset" REAL NOT NULL,
    "Chain" TEXT NOT NULL,
    "Words" TEXT NOT NULL,
    "IsActive" INTEGER NOT NULL,
    "SavedAt" INTEGER NOT NULL,
    "SavedBy" TEXT NOT NULL
);

CREATE TABLE "SparkplugNodes" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_SparkplugNodes" PRIMARY KEY AUTOINCREMENT,
    "Group" TEXT NOT NULL,
    "Node" TEXT NOT NULL,
    "IsOnline" INTEGER NOT NULL,
    "Since" INTEGER NULL,
    "LastAt" INTEGER NOT NULL,
    "BdSeq" INTEGER NULL,
    "Seq" INTEGER NULL,
    "BornAt" INTEGER NULL,
    "WantsBirth" INTEGER NOT NULL,
    "BirthAskedAt" INTEGER NULL
);

CREATE TABLE "SparkplugMetrics" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_SparkplugMetrics" PRIMARY KEY AUTOINCREMENT,
    "NodeId" INTEGER NOT NULL,
    "Device" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Alias" INTEGER NULL,
    "DataType" INTEGER NOT NULL,
    "Value" TEXT NOT NULL,
    "At" INTEGER NOT NULL,
    "IsStale" INTEGER NOT NULL,
    "ChainId" INTEGER NULL,
    CONSTRAINT "FK_SparkplugMetrics_Chains_ChainId" FOREIGN KEY ("ChainId") REFERENCES "Chains" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_SparkplugMetrics_SparkplugNodes_NodeId" FOREIGN KEY ("NodeId") REFERENCES "SparkplugNodes" ("Id") ON DELETE CASCADE
);

CREATE INDEX "IX_HeardMessages_At" ON "HeardMessages" ("At");

CREATE INDEX "IX_Listenings_Until" ON "Listenings" ("Until");

CREATE UNIQUE INDEX "IX_SignalMappings_Name_Version" ON "SignalMappings" ("Name", "Version");

CREATE INDEX "IX_SparkplugMetrics_ChainId" ON "SparkplugMetrics" ("ChainId");

CREATE UNIQUE INDEX "IX_SparkplugMetrics_NodeId_Device_Name" ON "SparkplugMetrics" ("NodeId", "Device", "Name");

CREATE UNIQUE INDEX "IX_SparkplugNodes_Group_Node" ON "SparkplugNodes" ("Group", "Node");

CREATE INDEX "IX_SparkplugNodes_WantsBirth" ON "SparkplugNodes" ("WantsBirth");
