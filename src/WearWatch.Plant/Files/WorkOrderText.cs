using System.Globalization;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Files;

/// <summary>A row of work_orders.csv: what another system says of a planned swap.</summary>
public static class WorkOrderText
{
    /// <summary>Stands in the column of material where none was used; an empty field says nothing of it.</summary>
    private const string NoMaterial = "none";

    /// <summary>The columns.</summary>
    public static IReadOnlyList<string> Columns { get; } =
        ["swap", "order_number", "order_state", "done_at", "hours_worked", "material", "note"];

    /// <summary>The row with its line; null when it is at fault.</summary>
    public static FileItem.Ordered? Read(RowFields fields, int line)
    {
        fields.Needed("order_state", $"write one of {string.Join(", ", FileWords.WorkOrderStates.Keys)}.");
        var told = new WorkOrderAsWritten
        {
            Swap = fields.Needed("swap", $"write the id under which the swap went out, such as swap-12."),
            Number = fields.Text("order_number"),
            State = fields.Word("order_state", FileWords.WorkOrderStates) ?? default,
            DoneAt = fields.Moment("done_at"),
            HoursWorked = fields.Number("hours_worked", 0, double.MaxValue),
            Material = Material(fields),
            Note = fields.Text("note"),
        };
        return fields.Faults.Count > 0 ? null : new FileItem.Ordered(line, told);
    }

    /// <summary>Parts with their quantities, such as <c>118 16B-1 chain; 1 16B-1 connecting link</c>.</summary>
    private static List<MaterialUsed>? Material(RowFields fields)
    {
        var text = fields.Text("material");
        if (text.Length == 0) return null;
        if (text.Equals(NoMaterial, StringComparison.OrdinalIgnoreCase)) return [];
        var used = new List<MaterialUsed>();
        foreach (var part in text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (part.Split(' ', 2, StringSplitOptions.TrimEntries) is [var quantity, { Length: > 0 } name]
                && int.TryParse(quantity, NumberStyles.None, CultureInfo.InvariantCulture, out var count))
                used.Add(new MaterialUsed(name, count));
            else
                fields.Fault("material", $"'{part}' is no quantity with its part: write it as 118 16B-1 chain, with ; between.");
        }

        return used;
    }
}
