using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using WearWatch.Chains;
using WearWatch.Plant.Bench;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch limit</c>: at which elongation a chain is to be replaced, and why.</summary>
internal static class LimitCommand
{
    public static Command Make(Screen screen)
    {
        var json = Shared.Json();
        var command = new Command("limit", "Works out at which elongation a chain is to be replaced, and which rule says so.")
        {
            BenchOptions.Text("type", "The chain type, such as 16B-1."),
            BenchOptions.Text("family", "The kind of chain; roller if neither it nor the type is given."),
            BenchOptions.Text("teeth", "Teeth of the sprockets, such as 17,75; the largest counts."),
            BenchOptions.Tick("fixed-centres", "Nothing takes up the slack."),
            BenchOptions.Tick("parallel", "It runs side by side with another chain that must stay alike."),
            BenchOptions.Tick("timing", "It is an engine's timing chain."),
            BenchOptions.Tick("positioning", "It positions something or keeps two shafts in step."),
            BenchOptions.Tick("high-performance", "It is a high-performance drive."),
            BenchOptions.Tick("lifts", "It lifts or holds a load."),
            BenchOptions.Number("take-up-mm", "How far the take-up can move a shaft from where a new chain is taut."),
            BenchOptions.Whole("chain-pitches", "Length of the whole chain in pitches, for the take-up."),
            BenchOptions.Number("pitch-mm", "Nominal pitch in millimetres, for the take-up."),
            BenchOptions.Number("elongation-pct", "The chain's elongation, for what to do about slack and sprockets."),
            json,
        };
        command.Validators.Add(result =>
        {
            var asked = new Asked(_ => result.GetValue<string?>("--teeth"));
            _ = asked.Teeth("--teeth");
            foreach (var refusal in asked.Wrong) result.AddError($"{refusal.Field}: {refusal.Reason}");
        });
        command.SetAction(parsed =>
            BenchOptions.Tell(screen, LimitBench.Answer(parsed.Asked()), worked => Tell(screen, worked, parsed.GetValue(json))));
        return command.WithExamples(
            "wearwatch limit --teeth 17,75", "wearwatch limit --teeth 19,38 --fixed-centres --json",
            "wearwatch limit --family leaf", "wearwatch limit --type 16B-1 --lifts",
            "wearwatch limit --type 20B-2 --teeth 21,45 --take-up-mm 60 --chain-pitches 140 --elongation-pct 1.6");
    }

    private static void Tell(Screen screen, LimitCalculation worked, bool asJson)
    {
        if (asJson)
        {
            screen.Output.WriteLine(JsonSerializer.Serialize(LimitJson.Of(worked), BenchJson.InEnglish.LimitJson));
            return;
        }

        screen.Output.WriteLine(Line(worked.Case.Lifts ? "Out of use at" : "Replace at", worked.Limits.Governing));
        if (worked.Limits.LowestByTeethPercent is { } lowest)
            screen.Output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"  teeth not known: between {lowest:0.##} and {worked.Limits.Governing.Percent:0.##} %; count them"));
        if (worked.Case.Lifts) foreach (var caution in worked.Cautions) screen.Output.WriteLine("Caution: " + caution);
        foreach (var other in worked.Limits.AlsoHold) screen.Output.WriteLine(Line("  also holds:", other));
        foreach (var advice in worked.Limits.Advice) screen.Output.WriteLine(Line("  advice:", advice));
        screen.Output.WriteLine((worked.Case.Lifts ? "Replacement: " : "Sprockets: ") + worked.Sprockets);
        if (worked.Limits.TakeUp is { } end)
            screen.Output.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"Take-up at its end at {end.Percent:0.##} %: {end.Why}"));
        if (worked.SlackAdvice is { } slack) screen.Output.WriteLine("Slack: " + slack);
    }

    private static string Line(string what, ReplacementLimit limit) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} {limit.Percent:0.##} %: {limit.Rule} ({limit.Source})");
}
