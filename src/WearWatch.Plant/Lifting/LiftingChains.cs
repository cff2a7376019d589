using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Lifting;

/// <summary>Finds chains that hold a load, and who may judge them.</summary>
internal static class LiftingChains
{
    /// <summary>The chain of that name, where it holds a load.</summary>
    public static async Task<ChainRow?> FindAsync(WearDb db, string name, CancellationToken ct) =>
        await db.Chains.SingleOrDefaultAsync(c => c.Name == name, ct) is { } chain && chain.ToCard().HoldsLoad ? chain : null;

    public static IntakeAnswer.Refused NoSuch(string name) =>
        new([new Refusal("chain", $"No chain that lifts or holds a load is called '{name}'.")]);

    /// <summary>When the physical chain that hangs there now was fitted; null where that is not recorded.</summary>
    public static async Task<DateTimeOffset?> FittedAtAsync(WearDb db, ChainRow chain, CancellationToken ct)
    {
        var events = await db.StandingEventsAsync(chain.Id, ct);
        return events.LastOrDefault(e => e.Kind == ChainEventKind.Replacement) is { } replaced
            ? replaced.At ?? replaced.ReceivedAt
            : chain.FittedAt;
    }

    /// <summary>The other chains of its set, by what the register says now.</summary>
    public static async Task<IReadOnlyList<int>> MatesAsync(WearDb db, int chainId, CancellationToken ct)
    {
        var newest = (await db.LiftingCards.AsNoTracking().Where(c => c.ChainSet != "" || c.ChainId == chainId).OrderBy(c => c.Id)
            .Select(c => new { c.ChainId, c.ChainSet }).ToListAsync(ct)).GroupBy(c => c.ChainId).Select(g => g.Last()).ToList();
        return newest.FirstOrDefault(c => c.ChainId == chainId) is { ChainSet: { Length: > 0 } set }
            ? [.. newest.Where(c => c.ChainSet == set && c.ChainId != chainId).Select(c => c.ChainId)]
            : [];
    }

    /// <summary>The appointments, those that were ended with the day of their end.</summary>
    public static async Task<IReadOnlyList<Appointment>> AppointmentsAsync(WearDb db, TimeZoneInfo zone, CancellationToken ct)
    {
        var rows = await db.Appointments.AsNoTracking().OrderBy(a => a.Id).ToListAsync(ct);
        var ends = rows.Where(r => r.EndsId is not null).ToLookup(r => r.EndsId!.Value);
        return
        [
            .. rows.Where(r => r.EndsId is null).Select(r => new Appointment(r.Id, r.Person, r.Line, r.Family, r.From, r.Until)
            {
                EndedOn = ends[r.Id]
                    .Select(e => (DateOnly?)DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(e.At, zone).DateTime)).Min(),
            }),
        ];
    }

    /// <summary>The appointment by which a person may examine and release a chain on a day; null for none.</summary>
    public static async Task<Appointment?> AppointmentAsync(
        WearDb db, string person, ChainCard card, DateOnly day, TimeZoneInfo zone, CancellationToken ct) =>
        (await AppointmentsAsync(db, zone, ct)).LastOrDefault(a => a.Covers(person, card, day));
}
