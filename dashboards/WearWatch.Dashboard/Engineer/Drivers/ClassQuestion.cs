using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;
using WearWatch.Learning;

namespace WearWatch.Dashboard.Engineer.Drivers;

/// <summary>A change of one driver on a class of chains; it stands in the address.</summary>
public sealed record ClassQuestion
{
    /// <summary>By what chains are told apart.</summary>
    public LifeGrouping By { get; init; } = LifeGrouping.Type;

    /// <summary>The class; empty while none is chosen.</summary>
    public string Group { get; init; } = "";

    public ClassDriver Driver { get; init; }

    /// <summary>To how much of today's value load, speed or interval are brought, in percent.</summary>
    public double ToPercent { get; init; } = 80;

    /// <summary>What the change costs once, in the plant's money.</summary>
    public double Once { get; init; }

    /// <summary>What it costs each year, in the plant's money.</summary>
    public double EachYear { get; init; }

    /// <summary>Whether the driver is a quantity, which is brought to a part of what it is today.</summary>
    public bool IsQuantity => ClassChange.IsQuantity(Driver);

    /// <summary>Reads a query string; what cannot be read is left out.</summary>
    public static ClassQuestion FromQuery(string query)
    {
        var values = QueryHelpers.ParseQuery(query);
        string Text(string name) => values.GetValueOrDefault(name).ToString();
        double Number(string name, double usual, double least, double most) =>
            double.TryParse(Text(name), CultureInfo.InvariantCulture, out var number) && number >= least && number <= most
                ? number
                : usual;
        var usual = new ClassQuestion();
        return new()
        {
            By = LifeGroupings.FromQuery(query, usual.By),
            Group = Text("class"),
            Driver = Enum.TryParse<ClassDriver>(Text("driver"), ignoreCase: true, out var driver) && Enum.IsDefined(driver)
                ? driver
                : usual.Driver,
            ToPercent = Number("to", usual.ToPercent, 1, 1000),
            Once = Number("once", 0, 0, 1e9),
            EachYear = Number("yearly", 0, 0, 1e9),
        };
    }

    /// <summary>The query string that reads back as this.</summary>
    public string ToQuery() => QueryHelpers.AddQueryString("", new Dictionary<string, string?>
    {
        ["by"] = By.ToString().ToLowerInvariant(),
        ["class"] = Group,
        ["driver"] = Driver.ToString().ToLowerInvariant(),
        ["to"] = ToPercent.ToString(CultureInfo.InvariantCulture),
        ["once"] = Once.ToString(CultureInfo.InvariantCulture),
        ["yearly"] = EachYear.ToString(CultureInfo.InvariantCulture),
    });
}
