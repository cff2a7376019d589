using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using WearWatch.Chains;
using WearWatch.Drives;
using WearWatch.Lubrication;
using WearWatch.Plant.Bench;

namespace WearWatch.Worker.Commands;

/// <summary><c>wearwatch drive</c>: what a drive of two sprockets does to its chain.</summary>
internal static class DriveCommand
{
    public static Command Make(Screen screen)
    {
        var json = Shared.Json();
        var command =
            new Command("drive", "Works out a drive: length, speed, pull, pressure, classic rating, oil and the wear to expect.")
        {
            BenchOptions.Text("type", "The chain type, such as 16B-1 or 80-2."),
            BenchOptions.Number("pitch-mm", "Pitch in millimetres, for a chain that is not in the catalogue."),
            BenchOptions.Whole("strands", "Strands of such a chain."),
            BenchOptions.Number("pin-mm", "Its pin diameter in millimetres."),
            BenchOptions.Number("joint-area-mm2", "Its bearing area in square millimetres, all strands."),
            BenchOptions.Number("tensile-kn", "Its tensile strength in kilonewtons, all strands."),
            BenchOptions.Number("mass-kg-m", "Mass of the chain in kilograms a metre, for the centrifugal pull."),
            BenchOptions.Whole("teeth", "Teeth of the driving sprocket."),
            BenchOptions.Whole("driven-teeth", "Teeth of the driven sprocket."),
            BenchOptions.Number("rpm", "Turns a minute of the driving sprocket."),
            BenchOptions.Text("speed", "Speed of the chain in place of --rpm: 0.5 (m/s), \"76 m/h\", \"100 ft/min\"."),
            BenchOptions.Text("power", "Power: 30 (kW) or \"40 hp\"."),
            BenchOptions.Whole("pitches", "Length of the chain in pitches."),
            BenchOptions.Text("centre", "Centre distance in millimetres (or \"40 in\") in place of --pitches."),
            BenchOptions.Whole("idlers", "Idlers, tensioners and third shafts that the chain bends at besides."),
            BenchOptions.Number("carried-kg", "Of a level conveyor: the mass that its chains carry, for the relative load."),
            BenchOptions.Number("friction", "Its coefficient of friction, such as 0.2."),
            BenchOptions.Text("load", "How evenly the driven machine pulls: smooth, some_impact or high_impact."),
            BenchOptions.Text("mover", "What drives: motor_or_turbine, engine_hydraulic or engine_mechanical."),
            BenchOptions.Text("lubrication", "How it is lubricated: auto, manual, poor or dry."),
            BenchOptions.Number("ambient-c", "Temperature of the surroundings in degrees Celsius, for the oil."),
            BenchOptions.Tick("fixed-centres", "Nothing takes up the slack."),
            BenchOptions.Tick("parallel", "It runs side by side with another chain that must stay alike."),
            BenchOptions.Tick("positioning", "It positions something or keeps two shafts in step."),
            BenchOptions.Tick("timing", "It is an engine's timing chain."),
            BenchOptions.Tick("high-performance", "It is a high-performance drive."),
            BenchOptions.Tick("lifts", "It lifts or holds a load."),
            BenchOptions.Number("take-up-mm", "How far the take-up can move a shaft, in millimetres."),
            json,
        };
        command.SetAction(parsed =>
            BenchOptions.Tell(screen, DriveBench.Answer(parsed.Asked()), worked => Tell(screen, worked, parsed.GetValue(json))));
        return command.WithExamples(
            "wearwatch drive --type 16B-1 --teeth 19 --driven-teeth 57 --rpm 300 --power 12 --centre 1000",
            "wearwatch drive --type 160-3 --teeth 21 --driven-teeth 63 --rpm 400 --power \"400 hp\" --pitches 120 --json",
            "wearwatch drive --type M112x160 --teeth 8 --driven-teeth 8 --speed \"76 m/h\" --power 0.2 --centre 24000");
    }

    private static void Tell(Screen screen, DriveCalculation worked, bool asJson)
    {
        if (asJson)
        {
            screen.Output.WriteLine(JsonSerializer.Serialize(DriveJson.Of(worked), BenchJson.InEnglish.DriveJson));
            return;
        }

        var (drive, figures, rating) = (worked.Drive, worked.Figures, worked.Rating);
        var rounded = worked.ExactPitches is { } exact ? Invariant($" ({exact:0.00} before rounding up to even)") : "";
        var odd = worked.HasOddPitches ? "; an odd number needs an offset link" : "";
        Line($"Length            {drive.Pitches} pitches{rounded}{odd}");
        Line($"Centre distance   {figures.CentreDistanceMm:0.0} mm");
        Line($"Pitch diameters   {figures.PitchDiameterMm:0.00} and {figures.DrivenPitchDiameterMm:0.00} mm");
        Line($"Speed             {figures.Speed.MetresPerSecond:0.###} m/s, swings by {figures.SpeedVariationPercent:0.0} %");
        var centrifugal = figures.CentrifugalPull is { } own ? Invariant($" and {own.Newtons:0} N centrifugal") : "";
        Line($"Pull              {figures.Pull.Kilonewtons:0.00} kN{centrifugal}");
        if (figures.SafetyFactor is { } safety) Line($"Safety factor     {safety:0.0} (tensile strength over pull)");
        if (figures.BearingPressureNewtonsPerMm2 is { } pressure) Line($"Bearing pressure  {pressure:0.0} N/mm2");
        var slips = figures.LoadedSlipMetresPerHour is { } slip ? Invariant($", {slip:0.00} m/h of loaded slip") : "";
        Line($"Articulations     {figures.ArticulationsPerHour:#,0} an hour{slips}");
        var rated = rating.Rated is { } power ? Invariant($"{power.Kilowatts:0.0} kW ({power.Horsepower:0} hp)") : "none";
        var asked = Invariant($"{rating.Asked.Kilowatts:0.0} kW asked, service factor {rating.ServiceFactor:0.0}");
        if (!figures.PullWarning.IsEmpty) Line($"Pull warning      {figures.PullWarning}");
        var relative = worked.RelativeLoad.Share is { } share ? Invariant($"{share:P0}, ") : "";
        Line($"Relative load     {relative}{worked.RelativeLoad.Basis}");
        Line($"Classic rating    {rated} for {asked}. {rating.Basis} ({ClassicRating.Generation})");
        var (oiling, oilSource) = worked.OilFeed is { } feed ? (feed.Text, feed.Source)
            : (OilAmount.OfLifting.Text, OilAmount.OfLifting.Source);
        Line($"Oil               {oiling} ({oilSource}){Grade(worked.OilGrade)}");
        var limit = worked.Limits.Governing;
        if (worked.HoldsLoad) foreach (var caution in worked.Cautions) Line($"Caution           {caution}");
        Line($"Limit             {limit.Percent:0.##} %: {limit.Rule} ({limit.Source})");
        if (worked is { ExpectedRate: { } rate, ExpectedHours: { } hours })
        {
            var widths = Invariant($"{rate.Middle:0.000} % per 1,000 h, 9 of 10 within {rate.Slow:0.000} and {rate.Fast:0.000}");
            Line($"Expected wear     {widths}; {hours.Early:#,0} to {hours.Late:#,0} h to the limit of {limit.Percent:0.##} %");
        }

        if (worked.FromMemory.Count > 0) Line($"From memory, not verified: {string.Join(", ", worked.FromMemory)}");

        void Line(FormattableString text) => screen.Output.WriteLine(Invariant(text));
    }

    private static string Grade(OilGrade? grade) => grade is null
        ? ""
        : $"; {grade.Sae} {(grade.IsoVg.Length > 0 ? "or ISO VG " + grade.IsoVg : "")} ({grade.Source})";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
