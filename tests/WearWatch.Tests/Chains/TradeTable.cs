using System.Text;

namespace WearWatch.Tests.Chains;

/// <summary>Reads a table of tests/data/trade (RFC 4180).</summary>
internal static class TradeTable
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "data", "trade", file));
        var columns = Split(lines[0]);
        return [.. lines.Skip(1).Select(line => columns.Zip(Split(line)).ToDictionary(p => p.First, p => p.Second))];
    }

    private static List<string> Split(string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        foreach (var c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }
        }

        cells.Add(cell.ToString());
        return cells;
    }
}
