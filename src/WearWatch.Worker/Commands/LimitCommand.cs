using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using WearWatch.Chains;
using WearWatch.Worker.Files;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch limit</c>: at which elongation a chain is to be replaced, and why.</summary>
internal static class LimitCommand
{
    public static Command Make(Screen screen)
    {
        var teeth = new Option<string?>("--teeth") { Description = "Teeth of the sprockets, such as 17,75; the largest counts." };
        var family = new Option<string>("--family")
        {
            Description = "The kind of chain.",
            DefaultValueFactory = _ => "roller",
        }.AcceptOnlyFromAmong([.. FileWords.Families.Keys]);
        var fixedCentres = new Option<bool>("--fixed-centres") { Description = "Nothing takes up the slack." };
        var parallel = new Option<bool>("--parallel")
        {
            Description = "It runs side by side with another chain that must stay alike.",
        };
        var timing = new Option<bool>("--timing") { Description = "It is an engine's timing chain." };
        var positioning = new Option<bool>("--positioning")
        {
            Description = "It positions something or keeps two shafts in step.",
        };
        var highPerformance = new Option<bool>("--high-performance") { Description = "It is a high-performance drive." };
        var lifts = new Option<bool>("--lifts") { Description = "It lifts or holds a load." };
        var takeUp = new Option<double?>("--take-up-mm")
        {
            Description = "How far the take-up can move a shaft from where a new chain is taut.",
        };
        var pitches = new Option<int?>("--chain-pitches")
        {
            Description = "Length of the whole chain in pitches, for the take-up.",
        };
        var pitch = new Option<double?>("--pitch-mm") { Description = "Nominal pitch in millimetres, for the take-up." };
        var json = Shared.Json();
        var command = new Command("limit", "Tells at which elongation a chain is to be replaced, and which rule says so.")
        {
            teeth, family, fixedCentres, parallel, timing, positioning, highPerformance, lifts, takeUp, pitches, pitch, json,
        };
        teeth.Validators.Add(result =>
        {
            if (Teeth(result.GetValueOrDefault<string?>()) is null) result.AddError("--teeth wants numbers from 5 to 1000 with commas between, such as 17,75.");
        });
        command.SetAction(parsed => Tell(screen, parsed.GetValue(json), new LimitCase
        {
            Family = FileWords.Families[parsed.GetValue(family)!],
            SprocketTeeth = Teeth(parsed.GetValue(teeth))!,
            FixedCentres = parsed.GetValue(fixedCentres),
            Parallel = parsed.GetValue(parallel),
            Timing = parsed.GetValue(timing),
            Positioning = parsed.GetValue(positioning),
            HighPerformance = parsed.GetValue(highPerformance),
            Lifts = parsed.GetValue(lifts),
            TakeUpTravelMm = parsed.GetValue(takeUp),
            ChainPitches = parsed.GetValue(pitches),
            PitchMm = parsed.GetValue(pitch),
        }));
        return command.WithExamples("wearwatch limit --teeth 17,75", "wearwatch limit --teeth 19,38 --fixed-centres --json", "wearwatch limit --family leaf");
    }

    /// <summary>The teeth in a text; null when it is none.</summary>
    private static List<int>? Teeth(string? text)
    {
        var teeth = new List<int>();
        foreach (var part in (text ?? "").Split([',', ' '], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var z) || z is < 5 or > 1000) return null;
            teeth.Add(z);
        }

        return teeth;
    }

    private static int Tell(Screen screen, bool asJson, LimitCase @case)
    {
        var verdict = LimitRules.For(@case);
        var limit = verdict.Governing;
        if (asJson)
        {
            screen.Output.WriteLine(JsonSerializer.Serialize(
                new LimitJson(limit.Percent, FileWords.Of(limit.Reason), limit.Source, limit.Rule), CommandJson.Default.LimitJson));
            return ExitCode.Done;
        }

        screen.Output.WriteLine(Line("Replace at", limit));
        foreach (var other in verdict.AlsoHold) screen.Output.WriteLine(Line("  also holds:", other));
        foreach (var advice in verdict.Advice) screen.Output.WriteLine(Line("  advice:", advice));
        return ExitCode.Done;
    }

    private static string Line(string what, ReplacementLimit limit) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} {limit.Percent:0.##} %: {limit.Rule} ({limit.Source})");
}
