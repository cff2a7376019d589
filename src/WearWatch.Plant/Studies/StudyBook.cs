using Microsoft.EntityFrameworkCore;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Studies;

/// <summary>The measuring studies that were kept.</summary>
public sealed class StudyBook(IDbContextFactory<WearDb> databases, TimeProvider clock)
{
    private const int LongestName = 100;
    private const int LongestReadings = 100_000;

    /// <summary>The studies of a kind, newest first.</summary>
    public async Task<IReadOnlyList<MeasuringStudyRow>> AskAsync(MeasuringStudyKind kind, CancellationToken ct = default)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        return await db.MeasuringStudies.AsNoTracking().Where(s => s.Kind == kind).OrderByDescending(s => s.Id).ToListAsync(ct);
    }

    /// <summary>Keeps a study.</summary>
    /// <returns>Why it is not kept; null when it is.</returns>
    public async Task<Phrase?> KeepAsync(
        MeasuringStudyKind kind, string name, string by, string readings, double? limit, CancellationToken ct = default)
    {
        if (name.Trim().Length is 0 or > LongestName)
            return $"Give the study a name of 1 to {LongestName} characters, such as 'Tapes, May'.";
        if (readings.Length > LongestReadings) return $"This is too long for a study; keep its readings in a file.";
        await using var db = await databases.CreateDbContextAsync(ct);
        db.MeasuringStudies.Add(new MeasuringStudyRow
        {
            Kind = kind,
            Name = name.Trim(),
            KeptBy = by,
            KeptAt = clock.GetUtcNow(),
            Readings = readings,
            Limit = limit,
        });
        await db.SaveChangesAsync(ct);
        return null;
    }
}
