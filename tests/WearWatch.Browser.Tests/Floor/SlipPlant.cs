using System.Globalization;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests.Floor;

/// <summary>
/// A plant in which any slip can be made: 1 and 2 on one line, with counts, counters and wear of their own, 3 whose whole loop is
/// measured, 4 with two places. 1,234.5 mm over 48 pitches at 5,130 h is what is to be expected of 1 today.
/// </summary>
internal static class SlipPlant
{
    private const double PitchMm = 25.4;
    private const int Visits = 5;
    private const int DaysApart = 60;
    private const double HoursApart = 900;

    public static async Task TakeInAsync(IServiceProvider services, string name)
    {
        var now = services.GetRequiredService<TimeProvider>().GetUtcNow();
        var report = await services.GetRequiredService<FileImport>().ImportAsync(
            [File("chains.csv", Chains(name, now)), File("readings.csv", Readings(name, now))]);
        Assert.True((report.Refused, report.Waiting) == (0, 0), string.Join("\n", report.Files.SelectMany(f => f.Remarks)));
    }

    private static ImportFile File(string name, string text) =>
        new(name, () => new MemoryStream(Encoding.UTF8.GetBytes(text))) { By = "Ina" };

    private static string Chains(string name, DateTimeOffset now)
    {
        return "chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h,limit_pct\n"
            + Row(1, "Slip line", 120, 0) + Row(2, "Slip line", 120, 7_800) + Row(3, "Loop line", 48, 0)
            + Row(4, "Place line", 120, 0);

        string Row(int chain, string line, int pitches, double counterH) => string.Create(CultureInfo.InvariantCulture,
            $"{name}-{chain},{name} {line},drive {chain},16B-1,{PitchMm},{pitches},{Moment(now.AddDays(-342))},{counterH},3\n");
    }

    private static string Readings(string name, DateTimeOffset now)
    {
        var text = new StringBuilder("chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c\n");
        for (var visit = 0; visit < Visits; visit++)
        {
            // 0.22 % from visit to visit, 1.05 % at the last.
            var percent = 1.05 - 0.22 * (Visits - 1 - visit);
            Add(1, 630, "", 48, percent);
            Add(2, 8_430, "", 60, 0.4 * (1 + visit));
            Add(3, 630, "", 48, percent);
            Add(4, 630, "A", 48, percent);
            // At the last visit nobody took the second place: so far from the first it would wait itself.
            if (visit < Visits - 1) Add(4, 630, "B", 48, 0.6 * percent);

            void Add(int chain, double firstH, string place, int pitches, double at) => text.Append(
                CultureInfo.InvariantCulture,
                $"{name}-{chain},{Moment(now.AddDays(DaysApart * (visit - Visits)))},{firstH + visit * HoursApart},tape,{place},")
                .Append(CultureInfo.InvariantCulture, $"{pitches},{pitches * PitchMm * (1 + at / 100):0.0},mm,20\n");
        }

        return text.ToString();
    }

    private static string Moment(DateTimeOffset at) => at.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
}
