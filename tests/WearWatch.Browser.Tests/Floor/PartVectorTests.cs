using System.Text.Json;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Chains.Parts;
using WearWatch.Parts;
using WearWatch.Running;
using WearWatch.Wear;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>What the phone says of a part without signal, against the domain's own condition, over random readings.</summary>
public sealed class PartVectorTests(Screen screen)
{
    private const int Entries = 2000;

    private const string Script = """
        async text => {
          const { judgePart } = await import('/floor/parts-page.js');
          return JSON.stringify(JSON.parse(text).map(({ known, part, mm }) => judgePart(known, part, mm).state));
        }
        """;

    private static readonly DateTimeOffset now = new(2026, 3, 1, 8, 0, 0, TimeSpan.Zero);

    [Fact]
    public async Task The_phone_agrees_with_the_domain_on_every_reading()
    {
        var random = new Random(7);
        var entries = Enumerable.Range(0, Entries).Select(_ =>
        {
            var family = random.Next(3) switch { 0 => "leaf", 1 => "conveyor", _ => "roller" };
            var part = family == "conveyor" && random.Next(2) == 0 ? WearPart.ToothRoot : WearPart.PlateHeight;
            double? fresh = part.Grows ? null : 20 + 20 * random.NextDouble();
            var mm = part.Grows ? 4 * random.NextDouble() : fresh!.Value * (0.6 + 0.4 * random.NextDouble());
            return (Card: new ChainCard { Name = "C", PitchMm = 50, Family = ChainFamily.Named(family) },
                Reading: new PartReading { Part = part, Mm = mm, TakenAt = now, Told = new PartTold(fresh, null, "") });
        }).ToList();
        await using var phone = await screen.OnPhoneAsync();
        await phone.Page.GotoAsync($"{screen.Address}/floor/");
        var said = JsonSerializer.Deserialize<string[]>(await phone.Page.EvaluateAsync<string>(Script, JsonSerializer.Serialize(
            entries.Select(e => new
            {
                known = KnownOf(e.Card, e.Reading),
                part = new { grows = e.Reading.Part.Grows },
                mm = e.Reading.Mm,
            }))))!;
        Assert.Equal(entries.Select(e => StateOf(e.Card, e.Reading)), said);
        Assert.Equal(["out", "plan", "within"], said.Distinct().Order());
    }

    private static Dictionary<string, double> KnownOf(ChainCard card, PartReading reading)
    {
        var limit = PartLimit.Of(card, reading.Part, reading.Told)!;
        var known = new Dictionary<string, double>
        {
            ["new_mm"] = limit.NewMm,
            ["limit_mm"] = limit.Mm,
            ["plan_mm"] = limit.NewMm + LimitWay.PlanFromPercent / 100 * (limit.Mm - limit.NewMm),
        };
        if (card.HoldsLoad) known["out_mm"] = limit.Mm + PartFinding.ExpandedMm(reading.Part);
        return known;
    }

    private static string StateOf(ChainCard card, PartReading reading)
    {
        var state = PartsState.Of(card, [reading], [], [], ProductionCalendar.AlwaysRunning, now);
        return state.ConditionOf(state.Tracks[0]) switch
        {
            Condition.SwapNow => "out",
            Condition.PlanASwap => "plan",
            _ => "within",
        };
    }
}
