using WearWatch.Phrases;

namespace WearWatch.Storage.Rows;

/// <summary>What a notice about the whole plant is about.</summary>
public enum PlantNoticeKind
{
    /// <summary>Forecasts held too seldom or too often, and were given another spread.</summary>
    ForecastsDrifted,

    /// <summary>Technicians handed entries to the planner that were refused and that they cannot put right.</summary>
    EntriesHanded,

    /// <summary>The night's backup failed, or the newest one is old.</summary>
    BackupMissing,

    /// <summary>A receiver of webhooks did not take an event in time, or wants no more.</summary>
    WebhookStopped,

    /// <summary>What another system reports of a work order contradicts what is known here.</summary>
    WorkOrderConflict,
}

/// <summary>A notice about no single chain, from its raising to its end. At most one of a kind is open.</summary>
public sealed class PlantNoticeRow
{
    public int Id { get; init; }

    public PlantNoticeKind Kind { get; init; }

    public required Phrase Why { get; set; }

    public required Phrase WhatToDo { get; set; }

    public DateTimeOffset RaisedAt { get; init; }

    /// <summary>When a person closed it; null while it is open.</summary>
    public DateTimeOffset? EndedAt { get; set; }

    public string EndedBy { get; set; } = "";
}
