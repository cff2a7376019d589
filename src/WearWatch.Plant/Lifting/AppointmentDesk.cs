using Microsoft.EntityFrameworkCore;
using WearWatch.Chains.Families;
using WearWatch.Plant.Intake;
using WearWatch.Plant.People;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Lifting;

/// <summary>The one way in for appointments of competent persons.</summary>
public sealed class AppointmentDesk(IDbContextFactory<WearDb> database, PlantClock plantClock)
{
    /// <summary>An appointment holds for so many years at most; then somebody thinks about it again.</summary>
    public const int MostYears = 5;

    private const int LongestText = 500;

    /// <summary>Enters an appointment.</summary>
    public async Task<IntakeAnswer> AppointAsync(AppointmentRow asked, CancellationToken ct = default)
    {
        var time = await plantClock.NowAsync(ct);
        var (person, by) = (asked.Person.Trim(), asked.AppointedBy.Trim());
        var faults = new List<Refusal>();
        if (PersonName.Fault(person) is { } unfit) faults.Add(new("person", unfit));
        if (by.Length == 0) faults.Add(new("appointed_by", $"Say who appoints."));
        if (string.Equals(person, by, StringComparison.OrdinalIgnoreCase))
            faults.Add(new("appointed_by", $"Nobody appoints himself or herself."));
        if (asked.Qualification.Trim().Length is 0 or > LongestText)
            faults.Add(new("qualification", $"Say by what training and experience."));
        if (asked.Until < asked.From || asked.Until > asked.From.AddYears(MostYears))
            faults.Add(new("until", $"It ends after it begins, and at most {MostYears} years later."));
        if (asked.Family.Length > 0 && ChainFamily.Find(asked.Family) is null)
            faults.Add(new("family", $"No such kind of chain."));
        if (faults.Count > 0) return new IntakeAnswer.Refused(faults);
        return await AddAsync(new AppointmentRow
        {
            Person = person,
            Qualification = asked.Qualification.Trim(),
            Line = asked.Line.Trim(),
            Family = ChainFamily.Find(asked.Family)?.Name ?? "",
            From = asked.From,
            Until = asked.Until,
            AppointedBy = by,
            At = time.Now,
        }, ct);
    }

    /// <summary>Ends an appointment before its time: from today on it lets nobody examine or release.</summary>
    public async Task<IntakeAnswer> EndAsync(int id, string by, string why, CancellationToken ct = default)
    {
        if (why.Trim().Length is 0 or > LongestText) return new IntakeAnswer.Refused([new("why", $"Say why in a few words.")]);
        var time = await plantClock.NowAsync(ct);
        await using var db = await database.CreateDbContextAsync(ct);
        if (await db.Appointments.SingleOrDefaultAsync(a => a.Id == id && a.EndsId == null, ct) is not { } ended)
            return new IntakeAnswer.Refused([new("appointment", $"There is no appointment {id}.")]);
        return await AddAsync(new AppointmentRow
        {
            Person = ended.Person,
            Qualification = ended.Qualification,
            From = ended.From,
            Until = time.Today,
            AppointedBy = by.Trim(),
            At = time.Now,
            EndsId = id,
            Why = why.Trim(),
        }, ct);
    }

    private async Task<IntakeAnswer> AddAsync(AppointmentRow row, CancellationToken ct)
    {
        await using var db = await database.CreateDbContextAsync(ct);
        db.Appointments.Add(row);
        await db.SaveChangesAsync(ct);
        return new IntakeAnswer.Taken(row.Id, AlreadyKnown: false);
    }
}
