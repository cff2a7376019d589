using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Settings;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Planning;

/// <summary>Takes orders from the day they are sent until they lie in the stock; the plan counts on what is to come.</summary>
/// <remarks>Each answer is empty when it is done, else it says why not.</remarks>
public sealed class OrderDesk(IDbContextFactory<WearDb> databases, PlantClock clock)
{
    /// <summary>More of a part is a slip.</summary>
    public const int MostPieces = 1_000_000;

    private const int PastShown = 50;

    /// <summary>The orders: those that are late first, then the others that are to come, then the last that have ended.</summary>
    public async Task<IReadOnlyList<PurchaseLine>> AskAsync(CancellationToken ct)
    {
        var today = (await clock.NowAsync(ct)).Today;
        await using var db = await databases.CreateDbContextAsync(ct);
        var open = await db.Purchases.AsNoTracking().Where(p => p.State <= PurchaseState.Confirmed).ToListAsync(ct);
        var past = await db.Purchases.AsNoTracking().Where(p => p.State > PurchaseState.Confirmed)
            .OrderByDescending(p => p.Id).Take(PastShown).ToListAsync(ct);
        return [.. open.OrderBy(p => p.ExpectedOn).ThenBy(p => p.Id).Concat(past).Select(p => new PurchaseLine(p, today))];
    }

    /// <summary>Writes down what was ordered. A part that has no record in the store gets one, with nothing there.</summary>
    public async Task<Phrase> OrderAsync(NewPurchase told, string by, CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        if (told.Part.Designation.Trim().Length == 0) return $"Which part? Such as 16B-1.";
        if (told.Quantity is < 1 or > MostPieces) return $"A quantity lies between 1 and {MostPieces}.";
        if (told.Price is not (>= 0 and <= 1e9)) return $"A price is not negative.";
        if (told.ExpectedOn < time.Today) return $"The day on which it is expected has passed.";
        await using var db = await databases.CreateDbContextAsync(ct);
        var (kind, designation) = (told.Part.Kind.ToString(), told.Part.Designation.Trim());
        var spare = await SpareAsync(db, kind, designation, ct);
        if (told.Supplier.Trim() is { Length: > 0 } supplier) spare.Supplier = supplier;
        if (told.Price > 0) spare.Price = told.Price;
        db.Purchases.Add(new PurchaseRow
        {
            Kind = kind,
            Designation = designation,
            Quantity = told.Quantity,
            Supplier = told.Supplier.Trim(),
            Price = told.Price,
            IsExpress = told.IsExpress,
            ExpectedOn = told.ExpectedOn,
            Steps = [new PurchaseStep(PurchaseState.Ordered, time.Now, by, "")],
        });
        await db.SaveChangesAsync(ct);
        return Phrase.None;
    }

    /// <summary>The supplier has confirmed it, or has told another day; the plan counts on that day.</summary>
    public Task<Phrase> ConfirmAsync(long id, DateOnly expected, string note, string by, CancellationToken ct) =>
        StepAsync(id, PurchaseState.Confirmed, by, (_, purchase, today) =>
        {
            if (expected < today) return Task.FromResult<(Phrase, string)>(($"The day on which it is expected has passed.", ""));
            var said = expected == purchase.ExpectedOn
                ? note.Trim()
                : FormattableString.Invariant($"{purchase.ExpectedOn:yyyy-MM-dd} > {expected:yyyy-MM-dd} {note.Trim()}").Trim();
            purchase.ExpectedOn = expected;
            return Task.FromResult((Phrase.None, said));
        }, ct);

    /// <summary>It has come: so much lies in the stock from now on.</summary>
    public Task<Phrase> ReceiveAsync(long id, int quantity, string by, CancellationToken ct) =>
        StepAsync(id, PurchaseState.Received, by, async (db, purchase, _) =>
        {
            if (quantity is < 1 or > MostPieces) return ($"A quantity lies between 1 and {MostPieces}.", "");
            purchase.ReceivedQuantity = quantity;
            (await SpareAsync(db, purchase.Kind, purchase.Designation, ct)).InStock += quantity;
            return (Phrase.None, "");
        }, ct);

    /// <summary>It does not come; the plan counts on it no more.</summary>
    public Task<Phrase> CancelAsync(long id, string why, string by, CancellationToken ct) =>
        StepAsync(id, PurchaseState.Cancelled, by, (_, _, _) => Task.FromResult<(Phrase, string)>(
            why.Trim().Length > 0 ? (Phrase.None, why.Trim()) : ($"Say why it is cancelled.", "")), ct);

    /// <summary>In one transaction: of two people who enter the same arrival, the second is told.</summary>
    private async Task<Phrase> StepAsync(
        long id, PurchaseState to, string by, Func<WearDb, PurchaseRow, DateOnly, Task<(Phrase Fault, string Note)>> take,
        CancellationToken ct)
    {
        var time = await clock.NowAsync(ct);
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var purchase = await db.Purchases.SingleAsync(p => p.Id == id, ct);
        if (!purchase.IsOpen) return $"This order has ended already: somebody entered it before.";
        var (fault, note) = await take(db, purchase, time.Today);
        if (!fault.IsEmpty) return fault;
        (purchase.State, purchase.Steps) = (to, [.. purchase.Steps, new PurchaseStep(to, time.Now, by, note)]);
        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
        return Phrase.None;
    }

    private static async Task<SpareRow> SpareAsync(WearDb db, string kind, string designation, CancellationToken ct)
    {
        var known = await db.Spares.FirstOrDefaultAsync(s => s.Kind == kind && s.Designation == designation, ct);
        if (known is not null) return known;
        var made = new SpareRow { Kind = kind, Designation = designation, LeadDays = UsualLeadDays };
        db.Spares.Add(made);
        return made;
    }

    private static int UsualLeadDays => (int)WearWatch.Planning.Supply.Spare.UsualLeadTime.TotalDays;
}
