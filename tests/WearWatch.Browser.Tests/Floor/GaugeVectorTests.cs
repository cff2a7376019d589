using System.Globalization;
using System.Text.Json;
using WearWatch.Chains.Families;
using WearWatch.Gauging;
using WearWatch.Units;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>The phone's arithmetic against the gauge's own, over the same texts as people type them.</summary>
public sealed class GaugeVectorTests(Screen screen)
{
    private const int Entries = 10_000;
    private const int Seed = 20261125;
    private static readonly double[] pitchesMm =
        [6.35, 9.525, 12.7, 15.875, 19.05, 25.4, 31.75, 38.1, 44.45, 50.8, 63.5, 76.2, 100, 160];

    [Fact]
    public async Task Ten_thousand_random_entries_come_out_alike_to_the_last_shown_digit()
    {
        var chance = new Random(Seed);
        var entries = Enumerable.Range(0, Entries).Select(_ => Entry(chance)).ToList();
        await using var phone = await screen.OnPhoneAsync();
        await phone.Page.GotoAsync(screen.Address + "/floor/files");
        var told = await phone.Page.EvaluateAsync<string>(Script, JsonSerializer.Serialize(entries, JsonSerializerOptions.Web));
        var answers = JsonSerializer.Deserialize<List<string>>(told)!;
        Assert.Equal(Entries, answers.Count);
        var differing = entries.Zip(answers).Where(pair => Oracle(pair.First) != pair.Second).ToList();
        Assert.True(differing.Count == 0,
            string.Join('\n', differing.Take(5).Select(d => $"{d.First} gauge: {Oracle(d.First)} phone: {d.Second}")));
        // Each kind of answer is among them, or the comparison would say less than it seems to.
        Assert.True(answers.Count(a => a.StartsWith("refused", StringComparison.Ordinal)) > 50);
        Assert.True(answers.Count(a => a.Contains("no chain runs so", StringComparison.Ordinal)) > 200);
    }

    private const string Script = """
        async entries => {
          const { readForm, lengthsText } = await import('/floor/measure-form.js');
          const { fixed } = await import('/floor/figures.js');
          return JSON.stringify(JSON.parse(entries).map(entry => {
            const form = { ...entry, counter: '', pitches: String(entry.pitches), place: '', strand: '', taut: true };
            const kind = { links_alternate: entry.linksAlternate, new_length_tolerance_pct: entry.newLengthTolerancePercent };
            const read = readForm(form, { pitch_mm: entry.pitchMm, kind, last_counter_h: null });
            const refusal = read.faults.length ?? read.faults.temperature_c;
            if (refusal) return `refused ${refusal}`;
            const { percent, standardUncertaintyPercent, scatterPercent, doubted } = read.gauged;
            return `${lengthsText(form)} = ${fixed(read.lengthMm, 2)}: ${fixed(percent, 2)} `
              + `${fixed(2 * standardUncertaintyPercent, 2)} ${fixed(scatterPercent, 4)} ${doubted ?? ''}`;
          }));
        }
        """;

    private static string Oracle(TypedEntry entry)
    {
        var unit = entry.Unit == "in" ? LengthUnit.Inch : LengthUnit.Millimetre;
        var text = string.Join(
            "; ", entry.Lengths.Select(l => entry.Tool == "caliper" ? MeasuredLengthText.OverRollers(l.One, l.Other) : l.One));
        if (EnteredLengths.Read(text, unit) is EnteredLengths.NotUnderstood not) return "refused " + not.Reason;
        var lengths = (EnteredLengths.Understood)EnteredLengths.Read(text, unit);
        var outcome = Gauge.Measure(new MeasuredSpan
        {
            PitchMm = entry.PitchMm,
            Pitches = entry.Pitches,
            LengthsMm = lengths.LengthsMm,
            Instrument = Instrument.Usual(entry.Tool == "caliper" ? Tool.Caliper : Tool.Tape),
            Family = entry.FamilyOf,
            ChainTemperatureC = entry.Temperature.Length > 0
                ? double.Parse(entry.Temperature, CultureInfo.InvariantCulture)
                : null,
        });
        return outcome switch
        {
            GaugeOutcome.Refused refused => "refused " + refused.Reason,
            GaugeOutcome.Doubted doubted => Shown(text, lengths, doubted.Elongation) + doubted.Reason,
            GaugeOutcome.Measured measured => Shown(text, lengths, measured.Elongation),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static string Shown(string text, EnteredLengths.Understood lengths, Elongation e) => FormattableString.Invariant(
        $"{text} = {lengths.MeanMm:0.00}: {e.Percent:0.00} {e.ExpandedUncertaintyPercent:0.00} {e.ScatterPercent:0.0000} ");

    private static TypedEntry Entry(Random chance)
    {
        var pitchMm = pitchesMm[chance.Next(pitchesMm.Length)];
        var pitches = chance.Next(1, 241);
        var unit = chance.Next(3) == 0 ? "in" : "mm";
        var tool = chance.Next(3) == 0 ? "caliper" : "tape";
        // Mostly chains as they run; some off by a slip, some far off.
        var percent = chance.Next(10) switch
        {
            0 => 25.4 * (chance.NextDouble() - 0.5),
            1 => 300 * chance.NextDouble() - 99,
            _ => 4 * chance.NextDouble() - 0.5,
        };
        var lengthMm = pitchMm * pitches * (1 + percent / 100);
        var lengths = Enumerable.Range(0, chance.Next(1, 6)).Select(_ =>
        {
            var mm = Math.Max(0.05, lengthMm + chance.NextDouble() - 0.5);
            return tool == "caliper"
                ? new TypedLength(Text(Math.Max(0.05, mm - 5), unit, chance), Text(mm + 5, unit, chance))
                : new TypedLength(Text(mm, unit, chance), "");
        });
        var temperature = chance.Next(3) == 0
            ? (chance.Next(-70, 120) + chance.Next(10) / 10.0).ToString(CultureInfo.InvariantCulture)
            : "";
        var family = ChainFamily.All[chance.Next(ChainFamily.All.Count)];
        return new TypedEntry(pitchMm, pitches, unit, tool, [.. lengths], temperature, family.Name);
    }

    /// <summary>
    /// A length as a person types it: decimals with point or comma, fractions on an inch rule, now and then nonsense.
    /// </summary>
    private static string Text(double mm, string unit, Random chance)
    {
        if (chance.Next(400) == 0) return "12 3/5";
        if (unit == "mm") return mm.ToString(chance.Next(4) switch { 0 => "0", 1 => "0.##", _ => "0.0" },
            CultureInfo.InvariantCulture).Replace('.', chance.Next(5) == 0 ? ',' : '.');
        return chance.Next(2) == 0
            ? (mm / 25.4).ToString("0.###", CultureInfo.InvariantCulture)
            : InchFraction.Nearest(new Length(mm), 1 << chance.Next(3, 7)).ToString();
    }

    private sealed record TypedLength(string One, string Other);

    private sealed record TypedEntry(
        double PitchMm, int Pitches, string Unit, string Tool, IReadOnlyList<TypedLength> Lengths, string Temperature,
        string Family)
    {
        public bool LinksAlternate => FamilyOf.LinksAlternate;

        public double NewLengthTolerancePercent => FamilyOf.NewLengthTolerancePercent.Value;

        [System.Text.Json.Serialization.JsonIgnore]
        public ChainFamily FamilyOf => ChainFamily.Named(Family);
    }
}
