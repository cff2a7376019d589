using System.Globalization;
using WearWatch.Planning.Supply;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Planner;

/// <summary>A part's stock as it is typed.</summary>
public sealed class SpareForm
{
    public PartKind Kind { get; set; } = PartKind.Chain;

    public string Designation { get; set; } = "";

    public int InStock { get; set; }

    public int LeadDays { get; set; } = (int)Spare.UsualLeadTime.TotalDays;

    public int ExpressLeadDays { get; set; } = SpareRow.UsualExpressLeadDays;

    public int PackSize { get; set; } = 1;

    public double Price { get; set; }

    /// <summary>Deliveries, one a line: a date and a quantity.</summary>
    public string OnOrder { get; set; } = "";

    public static SpareForm Of(SpareRow row) => new()
    {
        Kind = Enum.Parse<PartKind>(row.Kind),
        Designation = row.Designation,
        InStock = row.InStock,
        LeadDays = row.LeadDays,
        ExpressLeadDays = row.ExpressLeadDays,
        PackSize = row.PackSize,
        Price = row.Price,
        OnOrder = string.Join('\n', row.OnOrder.Select(d => FormattableString.Invariant($"{d.Due:yyyy-MM-dd} {d.Quantity}"))),
    };

    /// <summary>The stock, or what is wrong with it.</summary>
    public (Spare? Spare, IReadOnlyList<SpareDelivery> OnOrder, string? Fault) Read()
    {
        if (Designation.Trim().Length == 0) return (null, [], T["Which part? Such as 16B-1."]);
        if (InStock < 0 || LeadDays is < 0 or > 2000 || PackSize < 1 || Price is not (>= 0 and <= 1e9))
            return (null, [], T["Stock, lead time and price are not negative, and a pack size is at least one."]);
        if (ExpressLeadDays is < 0 or > 2000) return (null, [], T[$"An express order takes 0 to {2000:#,0} days."]);
        var deliveries = new List<SpareDelivery>();
        foreach (var line in OnOrder.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words.Length != 2
                || !DateOnly.TryParseExact(words[0], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var due)
                || !int.TryParse(words[1], NumberStyles.None, CultureInfo.InvariantCulture, out var quantity))
                return (null, [], T[$"'{line}' is no delivery: write a date and a quantity, such as 2026-12-01 160."]);
            deliveries.Add(new SpareDelivery(due, quantity));
        }

        return (new Spare
        {
            Part = new Part(Kind, Designation.Trim()),
            InStock = InStock,
            LeadTime = TimeSpan.FromDays(LeadDays),
            ExpressLeadTime = TimeSpan.FromDays(ExpressLeadDays),
            PackSize = PackSize,
            Price = Price,
        }, deliveries, null);
    }
}
