using System.Text;
using Microsoft.Extensions.DependencyInjection;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Browser.Tests;

/// <summary>A small plant's files: one chain with readings, one only registered, one row that cannot be taken.</summary>
public static class PlantFiles
{
    /// <summary>Writes the files and gives their paths.</summary>
    public static IReadOnlyList<string> Write(string name)
    {
        var folder = Directory.CreateTempSubdirectory("wearwatch-files-").FullName;
        return [.. Texts(name).Select(file =>
        {
            var path = Path.Combine(folder, file.Name);
            File.WriteAllText(path, file.Text);
            return path;
        })];
    }

    /// <summary>Takes the files in without a browser.</summary>
    public static Task<ImportReport> TakeInAsync(IServiceProvider services, string name) =>
        services.GetRequiredService<FileImport>().ImportAsync(
            [.. Texts(name)
                .Select(file =>
                    new ImportFile(file.Name, () => new MemoryStream(Encoding.UTF8.GetBytes(file.Text))) { By = "Ina" })]);

    private static IEnumerable<(string Name, string Text)> Texts(string name)
    {
        yield return ("chains.csv", $"""
        chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h,limit_pct,load_rel,speed_m_s,lubrication,dust
        {name}-1,Pallet line,Lift drive,16B-1,25.4,120,2025-12-01T00:00:00Z,0,3,0.5,1.5,auto,moderate
        {name}-2,Pallet line,Turn table,16B-1,25.4,96,2025-12-01T00:00:00Z,0,2,0.7,1.2,manual,heavy

        """);
        yield return ("readings.csv", $"""
            chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c
            {name}-1,2026-01-20T08:00:00Z,700,tape,,48,1223.0,mm,20
            {name}-1,2026-03-01T08:00:00Z,1500,tape,,48,1225.0,mm,20
            {name}-1,2026-05-01T08:00:00Z,2400,tape,,48,1227.5,mm,20
            {name}-1,2026-07-01T08:00:00Z,3300,tape,,48,1229.5,mm,20
            {name}-1,2026-09-01T08:00:00Z,4200,tape,,48,1232.0,mm,20
            {name}-2,2026-09-01T08:00:00Z,4200,tape,,0,1232.0,mm,20

            """);
        yield return ("events.csv", $"""
            chain,event,taken_at,counter_h_before,counter_h_after
            {name}-1,oiling,2026-08-15T08:00:00Z,3950,3950

            """);
    }
}
