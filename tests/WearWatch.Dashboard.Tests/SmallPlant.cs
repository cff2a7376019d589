using System.Text;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Tests;

/// <summary>Two chains as a plant would hand them over: one measured and oiled, one only registered.</summary>
public static class SmallPlant
{
    public static IReadOnlyList<ImportFile> Files { get; } =
    [
        File("chains.csv", """
        chain,line,position,chain_type,pitch_mm,pitches,fitted_at,fitted_counter_h,limit_pct,load_rel,speed_m_s,lubrication,dust
        K-1,Press,infeed,16B-1,25.4,120,2025-12-01T00:00:00Z,0,3,0.5,1.5,auto,moderate
        K-2,Press,outfeed,16B-1,25.4,96,2025-12-01T00:00:00Z,0,2,0.7,1.2,manual,heavy
        """),
        File("readings.csv", """
            chain,taken_at,counter_h,tool,place,pitches,length,unit,temperature_c
            K-1,2025-12-22T00:00:00Z,500,tape,,48,1222.8,mm,20
            K-1,2026-01-21T00:00:00Z,1200,tape,,48,1224.6,mm,20
            K-1,2026-02-25T00:00:00Z,2000,tape,,48,1227,mm,20
            K-1,2026-04-01T00:00:00Z,2800,tape,,48,1229.5,mm,20
            """),
        File("events.csv", """
            chain,event,taken_at,counter_h_before,counter_h_after
            K-1,oiling,2026-03-15T00:00:00Z,2400,2400
            """),
    ];

    private static ImportFile File(string name, string text) =>
        new(name, () => new MemoryStream(Encoding.UTF8.GetBytes(text + "\n"))) { By = "Ina" };
}
