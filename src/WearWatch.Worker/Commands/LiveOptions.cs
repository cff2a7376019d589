using System.CommandLine;
using System.Globalization;
using WearWatch.SensorSim.Live;
using WearWatch.Worker.Demo;

namespace WearWatch.Worker.Commands;

/// <summary>The options of <c>wearwatch demo --live</c>: the mill's machines speak to a broker.</summary>
internal sealed class LiveOptions
{
    private readonly Option<bool> live =
        new("--live") { Description = "Let the mill's machines publish to a broker, until Ctrl+C." };
    private readonly Option<string> host =
        new("--broker") { Description = "The broker's host.", DefaultValueFactory = _ => "127.0.0.1" };
    private readonly Option<int> port = new("--port") { Description = "The broker's port.", DefaultValueFactory = _ => 1883 };
    private readonly Option<int> days =
        new("--days") { Description = "Days of the past to publish first, 0 to 28.", DefaultValueFactory = _ => 3 };
    private readonly Option<double> speed =
        new("--speed") { Description = "How many times as fast as they passed.", DefaultValueFactory = _ => 3600 };
    private readonly Option<string> fault = new("--fault") { Description = "What is wrong.", DefaultValueFactory = _ => "none" };
    private readonly Option<double> since =
        new("--since-days") { Description = "Since how many days it is wrong, 0 for from now on.", DefaultValueFactory = _ => 0 };
    private readonly Option<string> chain =
        new("--chain") { Description = "At which chain it is wrong.", DefaultValueFactory = _ => LiveMill.Chains[0] };

    public LiveOptions()
    {
        fault.AcceptOnlyFromAmong([.. Faults.Keys]);
        chain.AcceptOnlyFromAmong([.. LiveMill.Chains]);
        days.Validators.Add(result => Within(result, result.GetValueOrDefault<int>(), 0, 28));
        since.Validators.Add(result => Within(result, result.GetValueOrDefault<double>(), 0, 28));
        port.Validators.Add(result => Within(result, result.GetValueOrDefault<int>(), 1, 65535));
        speed.Validators.Add(result => Within(result, result.GetValueOrDefault<double>(), 1, 1e6));
    }

    /// <summary>Each fault by its name in small letters, such as <c>moved-sensor</c>.</summary>
    private static IReadOnlyDictionary<string, LiveFault> Faults { get; } = Enum.GetValues<LiveFault>().ToDictionary(
        fault => string.Concat(fault.ToString().Select((c, i) =>
            (i > 0 && char.IsUpper(c) ? "-" : "") + char.ToLowerInvariant(c))));

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { live, host, port, days, speed, fault, since, chain }) command.Options.Add(option);
    }

    public bool IsWanted(ParseResult parsed) => parsed.GetValue(live);

    /// <summary>Publishes until it is stopped.</summary>
    public async Task RunAsync(ParseResult parsed, LiveDemo demo, Screen screen, CancellationToken ct)
    {
        var broker = (parsed.GetValue(host)!, parsed.GetValue(port));
        await screen.Error.WriteLineAsync($"Publishing to {broker.Item1}:{broker.Item2}. Stop it with Ctrl+C.");
        if (parsed.GetValue(fault) is { } wrong && wrong != "none")
        {
            await screen.Error.WriteLineAsync(
                $"The truth: {wrong} at {parsed.GetValue(chain)}, since {parsed.GetValue(since)} days.");
        }

        try
        {
            await demo.RunAsync(
                broker, parsed.GetValue(days), parsed.GetValue(speed), Faults[parsed.GetValue(fault)!], parsed.GetValue(since),
                parsed.GetValue(chain)!, Tell, ct);
        }
        catch (Exception e) when (e is MQTTnet.Exceptions.MqttCommunicationException)
        {
            throw new IOException($"The broker {broker.Item1}:{broker.Item2} cannot be reached or was lost: {e.Message}", e);
        }

        void Tell(int count, DateTimeOffset until)
        {
            if (screen.ShowsProgress) screen.Error.Write(
                string.Create(CultureInfo.InvariantCulture, $"\r{count:#,0} messages, up to {until:yyyy-MM-dd HH:mm} UTC "));
        }
    }

    private static void Within(System.CommandLine.Parsing.OptionResult result, double value, double least, double most)
    {
        if (value < least || value > most)
            result.AddError(string.Create(CultureInfo.InvariantCulture, $"{result.Option.Name} goes from {least} to {most}."));
    }
}
