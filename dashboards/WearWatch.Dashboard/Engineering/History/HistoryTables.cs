using Microsoft.EntityFrameworkCore;
using WearWatch.Lives;
using WearWatch.Storage;
using WearWatch.Worker.Books;
using WearWatch.Worker.Files;

namespace WearWatch.Dashboard.Engineering.History;

/// <summary>The tables of the open data door: the register, all that was told, all that was forecast, and the lives that follow.</summary>
public sealed class HistoryTables
{
    private static readonly int[] Percents = [5, 25, 50, 75, 95];

    private readonly IDbContextFactory<WearDb> databases;
    private readonly LifeBook book;

    public HistoryTables(IDbContextFactory<WearDb> databases, LifeBook book)
    {
        (this.databases, this.book) = (databases, book);
        All = [Chains(), Readings(), Events(), Forecasts(), Notices(), Lives()];
    }

    /// <summary>All tables.</summary>
    public IReadOnlyList<HistoryTable> All { get; }

    /// <summary>The table of a name; null when there is none.</summary>
    public HistoryTable? Of(string name) => All.FirstOrDefault(t => t.Name == name);

    private static readonly HistoryColumn Id = new("id", HistoryKind.Whole, "number of the row; rises with time and is never used again");

    private static readonly HistoryColumn Chain = new("chain", HistoryKind.Text, "name of the chain's position on the label");

    private HistoryTable Chains() => new(
        "chains", "A chain of the register as it stands now.",
        [
            Id, Chain, Text("line", "production line"), Text("position", "where on the line"), Text("chain_type", "designation"), Text("family", "kind of chain"),
            Number("pitch_mm", "nominal pitch"), new("pitches", HistoryKind.Whole, "length in pitches"), Moment("fitted_at", "first recorded fitting"),
            Number("fitted_counter_h", "hour counter then"), Text("lot", "supplier's lot of the first recorded chain"),
            Number("limit_pct", "limit that the plant set itself"), Number("load_rel", "bearing pressure over the permissible"), Number("speed_m_s", "chain speed"),
            Text("lubrication", "auto, manual, poor or dry"), Text("dust", "clean, moderate or heavy"),
        ],
        async (after, take, ct) =>
        {
            await using var db = await databases.CreateDbContextAsync(ct);
            return (await db.Chains.AsNoTracking().Where(c => c.Id > after).OrderBy(c => c.Id).Take(take).ToListAsync(ct)).ConvertAll(c => new object?[]
            {
                (long)c.Id, c.Name, c.Line, c.Position, c.ChainType, FileWords.Of(c.Family), c.PitchMm, (long?)c.Pitches, c.FittedAt, c.FittedCounterH,
                c.Lot, c.LimitPct, c.LoadRel, c.SpeedMS, c.Lubrication is { } oil ? FileWords.Of(oil) : null, c.Dust is { } dust ? FileWords.Of(dust) : null,
            });
        });

    private HistoryTable Readings() => new(
        "readings", "A reading as it was told, or a correction of one: a row that others correct or withdraw no longer counts.",
        [
            Id, Chain, Moment("taken_at", "when"), Number("counter_h", "hour counter"), Text("tool", "tape, caliper or sensor"), Text("place", "marked section of the chain"),
            new("pitches", HistoryKind.Whole, "pitches measured over"), Number("length_mm", "length over them"), Number("temperature_c", "of the chain, in degrees Celsius"),
            Text("standing", "accepted, or waiting for a person"), new("corrects_id", HistoryKind.Whole, "the row that this one replaces"),
            YesNo("withdraws", "whether it takes that row out of use"), Text("told_by", "person, program, or file with line"), Moment("received_at", "when it arrived"),
        ],
        async (after, take, ct) =>
        {
            await using var db = await databases.CreateDbContextAsync(ct);
            var rows = from r in db.Readings.AsNoTracking() where r.Id > after join c in db.Chains on r.ChainId equals c.Id orderby r.Id select new { r, c.Name };
            return (await rows.Take(take).ToListAsync(ct)).ConvertAll(x => new object?[]
            {
                x.r.Id, x.Name, x.r.TakenAt, x.r.CounterH, FileWords.Of(x.r.Tool), x.r.Place, (long)x.r.Pitches, x.r.LengthMm, x.r.TemperatureC,
                FileWords.Of(x.r.Standing), x.r.CorrectsId, x.r.Withdraws, x.r.ToldBy, x.r.ReceivedAt,
            });
        });

    private HistoryTable Events() => new(
        "events", "Something that happened to a chain, as it was told, or a correction of it.",
        [
            Id, Chain, Text("event", "replacement, meter_reset, oiling, shortened, tensioned, inspection"), Moment("taken_at", "when"),
            Number("counter_h_before", "hour counter just before"), Number("counter_h_after", "hour counter just after"),
            Text("lot", "supplier's lot of the chain that was fitted"), Text("oil_method", "how it was oiled"), Text("oil_grade", "with which oil"),
            Number("oil_amount_ml", "with how much"), Text("note", "what else was said"),
            new("corrects_id", HistoryKind.Whole, "the row that this one replaces"), YesNo("withdraws", "whether it takes that row out of use"),
            Text("told_by", "person, program, or file with line"), Moment("received_at", "when it arrived"),
        ],
        async (after, take, ct) =>
        {
            await using var db = await databases.CreateDbContextAsync(ct);
            var rows = from e in db.Events.AsNoTracking() where e.Id > after join c in db.Chains on e.ChainId equals c.Id orderby e.Id select new { e, c.Name };
            return (await rows.Take(take).ToListAsync(ct)).ConvertAll(x => new object?[]
            {
                x.e.Id, x.Name, FileWords.Of(x.e.Kind), x.e.At, x.e.CounterBeforeH, x.e.CounterAfterH, x.e.Lot,
                x.e.OilMethod is { } method ? FileWords.Of(method) : null, x.e.OilGrade, x.e.OilAmountMl, x.e.Note, x.e.CorrectsId, x.e.Withdraws,
                x.e.ToldBy, x.e.ReceivedAt,
            });
        });

    private HistoryTable Forecasts() => new(
        "forecasts", "A forecast as it was made; nothing is ever changed in it.",
        [
            Id, Chain, Moment("made_at", "when"), YesNo("is_latest", "whether it is the chain's newest"), Text("model", "the knowledge that it rests on"),
            new("life", HistoryKind.Whole, "which of the position's fitted chains, from 0"), new("readings", HistoryKind.Whole, "readings used"),
            Number("last_reading_h", "running hours since fitting at the last reading"), Number("now_h", "and when it was made"),
            Number("elongation_pct", "elongation by the track"), Number("rate_pct_per_1000h", "wear rate"), Number("limit_pct", "the limit"),
            .. Percents.Select(p => Number($"remaining_h_p{p:00}", $"hours left from the last reading at {p} %; empty beyond the horizon")),
            Number("early_exponent", "spread of its early side; 1 as made"), Number("late_exponent", "spread of its late side"),
            Moment("early_date", "the planner's date"), Moment("middle_date", "the middle date"), Text("condition", "within_limit, plan_a_swap, swap_now, not_known"),
        ],
        async (after, take, ct) =>
        {
            await using var db = await databases.CreateDbContextAsync(ct);
            var rows = from f in db.Forecasts.AsNoTracking() where f.Id > after join c in db.Chains on f.ChainId equals c.Id orderby f.Id select new { f, c.Name };
            return (await rows.Take(take).ToListAsync(ct)).ConvertAll(x => (object?[])
            [
                x.f.Id, x.Name, x.f.MadeAt, x.f.IsLatest, x.f.ModelVersion, (long)x.f.Life, (long)x.f.ReadingsUsed, x.f.HoursAtLastReading, x.f.HoursNow,
                x.f.ElongationPct, x.f.RatePctPer1000H, x.f.LimitPct, .. Percents.Select(p => (object?)x.f.ToForecast().Quantile(p)),
                x.f.EarlyExponent, x.f.LateExponent, x.f.EarlyDate, x.f.MiddleDate, FileWords.Of(x.f.Condition),
            ]);
        });

    private HistoryTable Notices() => new(
        "notices", "Something that asked for attention, with what a person made of it.",
        [
            Id, Chain, Text("kind", "what it is about"), YesNo("urgent", "whether to act now"), Text("why", "the reason with its numbers"),
            Moment("raised_at", "when it was raised"), Moment("ended_at", "when it ended"), YesNo("judged_real", "a person's judgement"), Text("judged_by", "whose"),
        ],
        async (after, take, ct) =>
        {
            await using var db = await databases.CreateDbContextAsync(ct);
            var rows = from n in db.Notices.AsNoTracking() where n.Id > after join c in db.Chains on n.ChainId equals c.Id orderby n.Id select new { n, c.Name };
            return (await rows.Take(take).ToListAsync(ct)).ConvertAll(x => new object?[]
            {
                x.n.Id, x.Name, FileWords.Of(x.n.Kind), x.n.Urgent, x.n.Why, x.n.RaisedAt, x.n.EndedAt, x.n.JudgedReal, x.n.JudgedBy,
            });
        });

    private HistoryTable Lives() => new(
        "lives", "A fitted chain from fitting to its limit, or as far as it is known; worked out anew from all that was told.",
        [
            new("id", HistoryKind.Whole, "number of the row in this answer"), Chain, Text("line", "production line"),
            new("life", HistoryKind.Whole, "which of the position's fitted chains, from 0"), Text("lot", "supplier's lot"), Moment("fitted_at", "when it was fitted"),
            Moment("ended_at", "when it was taken off, or read last"), Number("life_h", "running hours to the limit, or as far as known"),
            Text("ended", "reached_limit, replaced_before, still_running"), Number("run_h", "all hours that it ran"), Number("limit_pct", "the limit"),
            Number("last_pct", "last elongation read"), YesNo("fitting_known", "whether its hours count from its fitting"), YesNo("broke", "whether it broke while it ran"),
        ],
        async (after, take, ct) =>
        [
            .. (await book.ReadAsync(ct)).Chains.SelectMany(c => c.Lives.Select(l => (Chain: c, Life: l))).Select((x, i) => (x.Chain, x.Life, Number: i + 1L))
                .SkipWhile(x => x.Number <= after).Take(take).Select(x => new object?[]
                {
                    x.Number, x.Chain.Card.Name, x.Chain.Card.Line, (long)x.Life.Number, x.Life.Lot, x.Life.FittedAt, x.Life.EndedAt, x.Life.Life.Hours,
                    Ended(x.Life.Life.End), x.Life.HoursRun, x.Chain.LimitPercent, x.Life.LastPercent, x.Life.FittingKnown, x.Life.Broke,
                })
        ]);

    private static string Ended(LifeEnd end) => FileWords.Of(end);

    private static HistoryColumn Text(string name, string meaning) => new(name, HistoryKind.Text, meaning);

    private static HistoryColumn Number(string name, string meaning) => new(name, HistoryKind.Number, meaning);

    private static HistoryColumn Moment(string name, string meaning) => new(name, HistoryKind.Moment, meaning);

    private static HistoryColumn YesNo(string name, string meaning) => new(name, HistoryKind.YesNo, meaning);
}
