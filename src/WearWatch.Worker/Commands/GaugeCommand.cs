using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using WearWatch.Plant.Bench;
using WearWatch.Plant.Files;
using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch gauge</c>: a length over pitches to an elongation with its uncertainty.</summary>
internal static class GaugeCommand
{
    private static readonly string[] Lengths = ["--length-mm", "--length-in", "--inside"];

    public static Command Make(Screen screen)
    {
        var lengthMm = BenchOptions.Text("length-mm", "Measured length in millimetres; several with semicolons between.");
        var lengthIn = BenchOptions.Text("length-in", "Measured length in inches, such as \"40 3/16\", in place of --length-mm.");
        var json = Shared.Json();
        var command = new Command("gauge", "Works out how much longer than nominal a chain is, and how sure that is.")
        {
            BenchOptions.Number("pitch-mm", "Nominal pitch in millimetres."),
            BenchOptions.Text("type", "The chain type, such as 16B-1, in place of --pitch-mm."),
            BenchOptions.Whole("pitches", "Number of pitches in the length."),
            lengthMm,
            lengthIn,
            BenchOptions.Number(
                "inside", "Between the end rollers in millimetres, together with --outside in place of a length."),
            BenchOptions.Number("outside", "Over the end rollers in millimetres."),
            new Option<string?>("--tool") { Description = "With what it was measured; a tape if not given." }
                .AcceptOnlyFromAmong([.. FileWords.Tools.Keys]),
            BenchOptions.Text("tape-class", "Accuracy class of the tape: I, II or III; II if not given."),
            BenchOptions.Tick("from-hook", "One end of the tape was its hook."),
            BenchOptions.Number("largest-error-mm", "Largest error of the caliper or the sensors, as their maker states it."),
            BenchOptions.Text(
                "first-link", "With which link the length begins: outer or inner. It matters for an odd number of pitches."),
            BenchOptions.Number("temperature-c", "Temperature of the chain in degrees Celsius."),
            BenchOptions.Number("tool-temperature-c", "Temperature of the tool in degrees Celsius; 20 if not given."),
            BenchOptions.Tick("taut", "The chain hung in its place, taut."),
            BenchOptions.Number("load-n", "The measuring load in newtons, where it was pulled straight."),
            BenchOptions.Text("new-length", "Length of the same pitches when new, in the unit of the length."),
            BenchOptions.Tick("same-tool", "It was measured with the very same tool when new."),
            BenchOptions.Text("family", "The kind of chain; roller if not given."),
            BenchOptions.Text("teeth", "Teeth of the sprockets, such as 17,75, for the limit."),
            BenchOptions.Tick("lifts", "It lifts or holds a load; leaf and round-link chain do by their kind."),
            BenchOptions.Text("found", "Points of its checklist where something was found, such as pitting,stiff_joints."),
            BenchOptions.Number("limit-pct", "The limit in percent, in place of the rules."),
            BenchOptions.Tick(
                "confirmed", "The length is right even though it is shorter than 0.98 or longer than 1.10 of nominal."),
            json,
        };
        foreach (var option in LinkOptions.All) command.Add(option);
        command.Validators.Add(result =>
        {
            var told = Lengths.Count(name => result.GetResult(name) is not null);
            if (told == 0 && LinkOptions.AreGiven(result)) return;
            if (told != 1) result.AddError("Give one of --length-mm, --length-in, and --inside with --outside.");
            if (result.GetResult("--pitch-mm") is null && result.GetResult("--type") is null)
                result.AddError("Give --pitch-mm or --type.");
            if (result.GetResult("--pitches") is null) result.AddError("Option '--pitches' is required.");
        });
        command.SetAction(parsed =>
        {
            var inches = parsed.GetValue(lengthIn);
            var others = parsed.Asked();
            var asked = new Asked(name => name switch
            {
                "length" => inches ?? parsed.GetValue(lengthMm),
                "unit" => inches is null ? "mm" : "in",
                _ => others.Text(name),
            });
            if (!Lengths.Any(name => parsed.GetResult(name) is not null))
                return BenchOptions.Tell(
                    screen, LinkBench.Answer(asked), links => LinkOptions.Tell(screen, links, parsed.GetValue(json)));
            return BenchOptions.Tell(
                screen, GaugeBench.Answer(asked), worked => Tell(screen, worked, parsed.GetValue(json)), Doubted);
        });
        return command.WithExamples(
            "wearwatch gauge --pitch-mm 25.4 --pitches 40 --length-mm 1028.7",
            "wearwatch gauge --type 16B-1 --pitches 24 --length-mm \"617.5; 617.8; 617.6\" --tape-class I",
            "wearwatch gauge --type 12A-1 --pitches 14 --inside 258.6 --outside 282.4 --tool caliper",
            "wearwatch gauge --pitch-mm 19.05 --pitches 14 --length-in \"10 5/8\" --tool caliper --temperature-c 45 --json",
            "wearwatch gauge --pitch-mm 15 --family round_link --link-diameter-new 5 --one-link 15.4 --over-links 167 --d1 4.7 "
                + "--d2 4.9 --one-link-limit 15.7 --over-links-limit 170.6 --diameter-limit 4.5 --table-source \"hoist manual\"");
    }

    private static Refusal? Doubted(GaugeCalculation worked) =>
        worked.Doubt is { } doubt ? new Refusal("length", $"{doubt} If it is right all the same, add --confirmed.") : null;

    private static void Tell(Screen screen, GaugeCalculation worked, bool asJson)
    {
        if (asJson)
        {
            screen.Output.WriteLine(JsonSerializer.Serialize(GaugeJson.Of(worked), BenchJson.InEnglish.GaugeJson));
            return;
        }

        var elongation = worked.Elongation;
        var (expanded, standard) = (elongation.ExpandedUncertaintyPercent, elongation.StandardUncertaintyPercent);
        Line($"Elongation {elongation.Percent:0.000} % +- {expanded:0.000} % (k = 2; standard uncertainty {standard:0.000} %)");
        Line($"{worked.ShownCondition.Words}: {worked.Verdict}");
        if (worked.HoldsLoad) foreach (var caution in worked.Cautions) Line($"Caution: {caution}");
        Line($"Uncertainty budget, percent of elongation:");
        foreach (var part in worked.Budget.Components)
        {
            var share = 100 * worked.Budget.ShareOf(part);
            Line($"  {part.Name,-28}{part.StandardUncertaintyPercent,7:0.0000}  {share,4:0} %  {part.Source}");
        }

        Line($"{worked.Proposal.Advice}");
        Line($"{worked.HeldAdvice}");
        if (worked.Links is { } links) LinkOptions.TellMeasures(screen, links);

        void Line(FormattableString text) => screen.Output.WriteLine(text.ToString(CultureInfo.InvariantCulture));
    }
}
