using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using WearWatch.Plant.Bench;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch lubrication</c>: how, with what, how much and how often a chain is to be oiled.</summary>
internal static class OilCommand
{
    public static Command Make(Screen screen)
    {
        var json = Shared.Json();
        var command = new Command("lubrication", "Works out how, with what, how much and how often a chain is to be lubricated.")
        {
            BenchOptions.Text("type", "The chain type, such as 16B-1."),
            BenchOptions.Number("pitch-mm", "Nominal pitch in millimetres, where no type is given."),
            BenchOptions.Text("family", "The kind of chain; roller if neither it nor the type is given."),
            BenchOptions.Whole("strands", "Strands of the chain."),
            BenchOptions.Text("speed", "Chain speed in m/s, or with a unit such as 250 ft/min."),
            BenchOptions.Number("ambient-c", "Temperature of the surroundings in degrees Celsius."),
            BenchOptions.Text("method", "How it is lubricated now: hand, drip, bath, stream or lubricator."),
            BenchOptions.Text("lubrication", "auto, manual, poor or dry; manual if not given."),
            BenchOptions.Text("dust", "clean, moderate or heavy."),
            BenchOptions.Text("place", "What the place asks of the oil: food, explosive_atmosphere or dry_film."),
            BenchOptions.Text("material", "stainless, plated or plastic; steel if not given."),
            BenchOptions.Tick("lifts", "It lifts or holds a load; leaf and round-link chain do by their kind."),
            BenchOptions.Number("interval-h", "The plant's own interval in running hours."),
            BenchOptions.Number("surroundings-factor", "What the surroundings make of the handbook's interval."),
            json,
        };
        command.Aliases.Add("oil");
        command.SetAction(parsed =>
            BenchOptions.Tell(screen, OilBench.Answer(parsed.Asked()), worked => Tell(screen, worked, parsed.GetValue(json))));
        return command.WithExamples(
            "wearwatch lubrication --type 16B-1 --speed 0.8 --ambient-c 25",
            "wearwatch lubrication --type 80 --speed 2 --ambient-c 40 --method hand --json");
    }

    private static void Tell(Screen screen, OilCalculation worked, bool asJson)
    {
        if (asJson)
        {
            screen.Output.WriteLine(JsonSerializer.Serialize(ChainOilJson.Of(worked), BenchJson.InEnglish.ChainOilJson));
            return;
        }

        var advice = worked.Advice;
        foreach (var caution in advice.Cautions) screen.Output.WriteLine($"Caution: {caution.Words} ({caution.Source})");
        if (advice.Warning is { } warning) screen.Output.WriteLine("Warning: " + warning);
        if (worked.HoldsLoad) foreach (var caution in worked.Cautions) screen.Output.WriteLine("Caution: " + caution);
        if (advice.Feed is { } feed) screen.Output.WriteLine($"How: {feed.Text} ({feed.Source})");
        if (advice.Grade is { } grade) screen.Output.WriteLine(
            $"With what: {grade.Name}, {grade.Sae} ({grade.Source}){(grade.Remark.IsEmpty ? "" : $"; {grade.Remark}")}");
        if (advice.Amount is { } amount) screen.Output.WriteLine($"How much: {amount.Text} ({amount.Source})");
        screen.Output.WriteLine(worked.Plan.IntervalHours is { } hours
            ? string.Create(CultureInfo.InvariantCulture, $"How often: every {hours:0.#} h of running; {worked.Plan.Basis}")
            : $"How often: {worked.Plan.Basis}");
        foreach (var missing in advice.Missing) screen.Output.WriteLine("Missing: " + missing);
    }
}
