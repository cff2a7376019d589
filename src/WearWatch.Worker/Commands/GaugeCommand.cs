using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using WearWatch.Gauging;
using WearWatch.Units;
using WearWatch.Worker.Files;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch gauge</c>: one length to an elongation.</summary>
internal static class GaugeCommand
{
    public static Command Make(Screen screen)
    {
        var pitch = new Option<double>("--pitch-mm") { Description = "Nominal pitch in millimetres.", Required = true };
        var pitches = new Option<int>("--pitches") { Description = "Number of pitches in the length.", Required = true };
        var lengthMm = new Option<double?>("--length-mm") { Description = "Measured length in millimetres." };
        var lengthIn = new Option<string?>("--length-in")
        {
            Description = "Measured length in inches, such as \"40 3/16\", in place of --length-mm.",
        };
        var tool = new Option<string>("--tool")
        {
            Description = "With what it was measured.",
            DefaultValueFactory = _ => "tape",
        }.AcceptOnlyFromAmong([.. FileWords.Tools.Keys]);
        var temperature = new Option<double?>("--temperature-c")
        {
            Description = "Temperature of the chain in degrees Celsius; 20 if not given.",
        };
        var confirmed = new Option<bool>("--confirmed")
        {
            Description = "The length is right even though it is shorter than 0.98 or longer than 1.10 of nominal.",
        };
        var json = Shared.Json();
        var command = new Command("gauge", "Tells how much longer than nominal a chain is, and how sure that is.")
        {
            pitch, pitches, lengthMm, lengthIn, tool, temperature, confirmed, json,
        };
        command.Validators.Add(result =>
        {
            if (result.GetResult(lengthMm) is null == result.GetResult(lengthIn) is null) result.AddError("Give one of --length-mm and --length-in.");
        });
        command.SetAction(parsed =>
        {
            var length = parsed.GetValue(lengthMm);
            if (parsed.GetValue(lengthIn) is { } text)
            {
                var read = LengthText.Read(text, LengthUnit.Inch);
                if (read is LengthText.NotUnderstood not) return Refuse(screen, "length", not.Reason);
                length = ((LengthText.Understood)read).Length.Millimetres;
            }

            var outcome = Gauge.Measure(
                parsed.GetValue(pitch), parsed.GetValue(pitches), length!.Value, FileWords.Tools[parsed.GetValue(tool)!],
                parsed.GetValue(temperature));
            return outcome switch
            {
                GaugeOutcome.Measured measured => Tell(screen, measured.Elongation, parsed.GetValue(json)),
                GaugeOutcome.Doubted doubted when parsed.GetValue(confirmed) => Tell(screen, doubted.Elongation, parsed.GetValue(json)),
                GaugeOutcome.Doubted doubted => Refuse(screen, "length", doubted.Reason + " If it is right all the same, add --confirmed."),
                GaugeOutcome.Refused refused => Refuse(screen, refused.Field, refused.Reason),
                _ => throw new System.Diagnostics.UnreachableException(),
            };
        });
        return command.WithExamples(
            "wearwatch gauge --pitch-mm 25.4 --pitches 40 --length-mm 1028.7",
            "wearwatch gauge --pitch-mm 19.05 --pitches 14 --length-in \"10 5/8\" --tool caliper --temperature-c 45 --json");
    }

    private static int Tell(Screen screen, Elongation elongation, bool asJson)
    {
        screen.Output.WriteLine(asJson
            ? JsonSerializer.Serialize(
                new GaugeJson(elongation.Percent, elongation.StandardUncertaintyPercent, elongation.ExpandedUncertaintyPercent), CommandJson.Default.GaugeJson)
            : string.Create(CultureInfo.InvariantCulture,
                $"Elongation {elongation.Percent:0.000} % +- {elongation.ExpandedUncertaintyPercent:0.000} % (k = 2)"));
        return ExitCode.Done;
    }

    private static int Refuse(Screen screen, string field, string reason)
    {
        screen.Error.WriteLine($"{field}: {reason}");
        return ExitCode.Refused;
    }
}
