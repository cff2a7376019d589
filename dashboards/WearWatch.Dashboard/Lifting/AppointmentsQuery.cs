using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Lifting;

/// <summary>An appointment, for the screen.</summary>
/// <param name="Row">As it was entered.</param>
/// <param name="EndedOn">When it was ended before its time, by whom and why; null when it was not.</param>
/// <param name="Holds">Whether it holds today.</param>
public sealed record AppointmentLine(AppointmentRow Row, AppointmentRow? EndedOn, bool Holds);

/// <summary>The appointments, newest first.</summary>
public sealed record AppointmentsView(IReadOnlyList<AppointmentLine> Lines, IReadOnlyList<string> PlantLines, PlantTime Time);

/// <summary>Asks for the appointments of competent persons.</summary>
public sealed class AppointmentsQuery(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    /// <summary>All of them, those that ended among them.</summary>
    public async Task<AppointmentsView> AskAsync(CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        var rows = await db.Appointments.AsNoTracking().OrderByDescending(a => a.Id).ToListAsync(ct);
        var ends = rows.Where(r => r.EndsId is not null).ToLookup(r => r.EndsId!.Value);
        return new AppointmentsView(
            [
                .. rows.Where(r => r.EndsId is null).Select(r => new AppointmentLine(
                    r, ends[r.Id].LastOrDefault(),
                    !ends[r.Id].Any() && r.From <= time.Today && time.Today <= r.Until)),
            ],
            await db.Chains.Select(c => c.Line).Distinct().OrderBy(l => l).ToListAsync(ct), time);
    }
}
