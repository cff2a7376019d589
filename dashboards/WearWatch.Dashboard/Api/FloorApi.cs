using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Answers;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Dashboard.Kit.People;
using WearWatch.Entries;
using WearWatch.Lubrication;
using WearWatch.Plant.Rounds;
using WearWatch.Plant.Settings;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Dashboard.Api;

internal static class FloorApi
{
    public static void Map(IEndpointRouteBuilder api)
    {
        var floor = api.MapGroup("/floor").WithTags("Floor");
        floor.MapGet("/pack", PackAsync).WithSummary("All that a phone needs to measure, lubricate and inspect without signal")
            .Produces<FloorPackJson>().Produces(StatusCodes.Status304NotModified);
        floor.MapPost("/rounds", HandAsync)
            .WithSummary("Takes a line's round of a day, or gives it back; needs an Idempotency-Key")
            .RequireAuthorization(Allowed.MeasureAndDo).Accepts<RoundHandEntryJson>("application/json").Produces<RoundHandJson>()
            .ProducesProblem(400).ProducesValidationProblem(422);
    }

    private static async Task<IResult> HandAsync(HttpRequest request, RoundDesk desk, CancellationToken ct)
    {
        var told = await KeyedRequest<RoundHandEntryJson>.ReadAsync(request, ApiJson.Default.RoundHandEntryJson, ct);
        if (told.Body is not { } body) return told.Problem!;
        if (body.Line is not { } line)
            return Problems.Refused("line", $"Say which line's round; empty for chains without a line.");
        if (body.Day is not { } day) return Problems.Refused("day", $"A date such as 2026-11-25.");
        var who = request.HttpContext.User;
        if (Maker.Fault(who, body.By) is { } others) return others;
        var person = await desk.HandAsync(told.Key, line, day, Maker.Name(who, body.By), body.GivesBack ?? false, ct);
        return Results.Ok(new RoundHandJson(line, day, person));
    }

    private static async Task<IResult> PackAsync(
        HttpContext http, FloorQuery query, RoundDesk rounds, LiftingStatesQuery lifting, PlantSettings settings,
        PlantClock clock, CancellationToken ct)
    {
        var states = await lifting.AskAsync(ct);
        var mark = await settings.MarkAsync(ct);
        var plant = await settings.CurrentAsync(ct);
        var (calendar, time) = (await settings.CalendarAsync(ct), await clock.NowAsync(ct));
        var chains = await query.AskAsync(ct);
        var pack = new FloorPackJson
        {
            MadeAt = time.Now,
            Plant = new FloorPlantJson(plant.Name, mark, plant.TimeZone, calendar.PerWeek.Hours, plant.IsDemo),
            Chains =
            [
                .. chains.Select(chain => ToJson(
                    chain, Tasks(chain, calendar, time), plant.LawRegion, states[chain.Row.Name])),
            ],
            Hands = await rounds.PersonsAsync(time.Today, ct),
            Cautions = chains.DistinctBy(CautionName).ToDictionary(CautionName, c => Said(Caution.For(c.Row.Family,
                c.Row.HoldsLoad))),
            Guides = chains.Select(c => c.Row.Family).Distinct().ToDictionary(f => f.Name, f => Said(f.MeasuringSteps)),
            Kinds = chains.Select(c => c.Row.Family).Distinct().ToDictionary(f => f.Name, ToJson),
            Checklists = chains.DistinctBy(CautionName).ToDictionary(CautionName, Points),
        };
        return Unchanged.Or(http, pack, pack with { MadeAt = default }, ApiJson.Default.FloorPackJson);
    }

    private static IReadOnlyList<FloorPointJson> Points(FloorChain chain) =>
        [.. chain.Row.Family.CheckPoints(chain.Row.HoldsLoad)
            .Select(p => new FloorPointJson(Tokens.Of(p.Point), T[p.Ask], T[p.Advice], p.StopsTheChain,
                T[SourceWords.Of(p.Source)]))];

    // In the language of the phone that fetches the pack: what it shows without signal is said beforehand.
    private static IReadOnlyList<string> Said(IReadOnlyList<Phrase> phrases) => [.. phrases.Select(p => T[p])];

    private static FloorKindJson ToJson(ChainFamily family) =>
        new(family.LinksAlternate, Tokens.Of(family.Measured), family.NewLengthTolerancePercent.Value,
            FloorPartNameJson.Of(family));

    private static string CautionName(FloorChain chain) => chain.Row.Family.Name + (chain.Row.HoldsLoad ? "_lifts" : "");

    private static FloorChainJson ToJson(
        FloorChain chain, IReadOnlyList<FloorTaskJson> tasks, LawRegion region, LiftingNow? lifting)
    {
        var (row, forecast, proposal) = (chain.Row, chain.Forecast, chain.Proposal);
        return new FloorChainJson
        {
            Id = row.Id,
            Chain = row.Name,
            Line = row.Line,
            Position = row.Position,
            ChainType = row.ChainType,
            Family = row.Family.Name,
            PitchMm = row.PitchMm,
            Pitches = row.Pitches,
            Strands = row.ToCard().Strands,
            HasTakeUp = !row.FixedCentres,
            CanBeOdd = row.Family.ClosesAtOdd,
            HoldsLoad = row.HoldsLoad,
            OutOfUseBy = forecast?.OutOfUseBy,
            MayBeShortened = row.Family.Shortens(row.HoldsLoad),
            Mates = chain.Mates,
            Caution = CautionName(chain),
            Condition = ConditionWords.Of(forecast?.Condition ?? Condition.NotKnown, row.HoldsLoad).Wire,
            ElongationPct = forecast?.ElongationPct,
            LimitPct = chain.LimitPercent,
            EarlyDate = forecast?.EarlyDate,
            LimitedBy = forecast is { OutOfUseBy: null, LimitedBy: { } cause } ? T[cause] : null,
            ShortenFrom = forecast?.ShortenFrom,
            ShortenPitches = forecast?.ShortenPitches,
            TensionFrom = forecast?.TensionFrom,
            PlannedSwap = chain.PlannedSwap,
            OilCautions = [.. OilCaution.For(row.ToCard()).Select(c => T[c.Words])],
            Oil = FloorOilJson.Of(chain.Oil),
            LastCounterH = chain.LastCounterH,
            Last = Last(chain),
            Proposed = new FloorSpanJson(proposal.Pitches, proposal.LengthMm, T[proposal.Advice]),
            Expected = Expected(forecast),
            Tasks = tasks,
            Parts = FloorPartJson.Of(row.ToCard(), chain.Parts),
            Links = FloorLinksJson.Of(row.ToCard().Links, row.HoldsLoad, region),
            Lifting = LiftingNowJson.Of(lifting),
        };
    }

    private static IReadOnlyList<FloorTaskJson> Tasks(FloorChain chain, ProductionCalendar calendar, PlantTime time) =>
    [
        .. chain.Tasks(calendar, time.Now).Select(task => new FloorTaskJson(
            Tokens.Of(task.Kind), OfTheDay(task.DueAt, time), T[task.Why],
            chain.IsDoneSince(task.Kind, time.StartOf(time.Today)))),
    ];

    /// <remarks>What is due at once is due all day: a moment that goes with the clock would make each pack another one.</remarks>
    private static DateTimeOffset? OfTheDay(DateTimeOffset? due, PlantTime time) =>
        due > time.StartOf(time.Today) && due <= time.Now ? time.StartOf(time.Today) : due;

    private static FloorReadingJson? Last(FloorChain chain) => chain.Last is not { } last ? null : new FloorReadingJson
    {
        TakenAt = last.TakenAt ?? last.ReceivedAt,
        Tool = Tokens.Of(last.Tool),
        Unit = Tokens.Of(last.Unit),
        Place = last.Place,
        Pitches = last.Pitches,
        LengthMm = last.LengthMm,
        LengthAsTold = last.LengthAsTold,
        ElongationPct = chain.LastPercent,
    };

    private static FloorExpectedJson? Expected(FloorForecast? forecast) =>
        forecast is not { } kept ? null : new FloorExpectedJson(
        kept.ElongationPct ?? Expectation.NewChain.MeanPercent,
        kept.ElongationSdPct ?? Expectation.NewChain.StandardDeviationPercent,
        kept.RatePctPer1000H, kept.LogRateSd, kept.HoursNow - kept.HoursAtLastReading);
}
