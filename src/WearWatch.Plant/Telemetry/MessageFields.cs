using System.Text.Json;

namespace WearWatch.Plant.Telemetry;

/// <summary>Reads the fields of a JSON message one after the other and remembers the first thing that is wrong.</summary>
/// <remarks>A field that nobody asked for is wrong too: a temperature under a misspelt name would be lost in silence.</remarks>
internal sealed class MessageFields
{
    private readonly Dictionary<string, JsonElement> fields = new(StringComparer.Ordinal);
    private readonly List<string> asked = [];

    public MessageFields(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            Fault = $"A message is one JSON object.";
            return;
        }

        foreach (var field in root.EnumerateObject())
            if (!fields.TryAdd(field.Name, field.Value)) Fault ??= $"The field '{field.Name}' stands in it twice.";
    }

    /// <summary>What is wrong; null while nothing is.</summary>
    public Phrase? Fault { get; private set; }

    public bool Has(string name) => fields.ContainsKey(name);

    public string Text(string name, int longest)
    {
        if (Take(name, required: true) is not { } field) return "";
        if (field.ValueKind == JsonValueKind.String && field.GetString()!.Trim() is { Length: > 0 } text
            && text.Length <= longest) return text;
        return Wrong(name, $"a text of 1 to {longest} characters", "");
    }

    public DateTimeOffset Moment(string name)
    {
        if (Take(name, required: true) is not { } field) return default;
        return field.ValueKind == JsonValueKind.String && SenderTime.Read(field.GetString()!) is { } at
            ? at
            : Wrong(name, $"a time with its offset such as 2026-11-25T06:30:00.125Z", default(DateTimeOffset));
    }

    public double Number(string name, double least, double most) => Optional(name, least, most, required: true) ?? 0;

    public double? Optional(string name, double least, double most, bool required = false)
    {
        if (Take(name, required) is not { } field) return null;
        return field.ValueKind == JsonValueKind.Number && field.TryGetDouble(out var number) && number >= least && number <= most
            ? number
            : Wrong(name, $"a number from {least:#,0.###} to {most:#,0.###}", default(double?));
    }

    public long Whole(string name, long least, long most)
    {
        if (Take(name, required: true) is not { } field) return 0;
        return field.ValueKind == JsonValueKind.Number && field.TryGetInt64(out var number) && number >= least && number <= most
            ? number
            : Wrong(name, $"a whole number from {least:#,0} to {most:#,0}", 0L);
    }

    public bool Truth(string name)
    {
        if (Take(name, required: true) is not { } field) return false;
        return field.ValueKind is JsonValueKind.True or JsonValueKind.False
            ? field.GetBoolean()
            : Wrong(name, $"true or false", false);
    }

    /// <summary>Rising whole numbers.</summary>
    public IReadOnlyList<long> Rising(string name, int fewest, int mostNumbers, long most)
    {
        if (Take(name, required: true) is not { } field) return [];
        Phrase wanted = $"{fewest} to {mostNumbers:#,0} rising whole numbers from 0 to {most:#,0}";
        if (field.ValueKind != JsonValueKind.Array || field.GetArrayLength() < fewest || field.GetArrayLength() > mostNumbers)
            return Wrong<IReadOnlyList<long>>(name, wanted, []);
        var numbers = new List<long>(field.GetArrayLength());
        foreach (var item in field.EnumerateArray())
        {
            if (item.ValueKind != JsonValueKind.Number || !item.TryGetInt64(out var number) || number > most || number < 0
                || (numbers.Count > 0 && number <= numbers[^1]))
                return Wrong<IReadOnlyList<long>>(name, wanted, []);
            numbers.Add(number);
        }

        return numbers;
    }

    /// <summary>To be called last: nothing may be left that nobody asked for.</summary>
    public void End()
    {
        if (fields.Keys.FirstOrDefault(f => !asked.Contains(f)) is { } stranger)
            Fault ??= $"The field '{stranger}' is not known here; known are {string.Join(", ", asked.Distinct())}.";
    }

    private JsonElement? Take(string name, bool required)
    {
        asked.Add(name);
        if (fields.TryGetValue(name, out var field) && field.ValueKind != JsonValueKind.Null) return field;
        if (required) Fault ??= $"The field '{name}' is missing.";
        return null;
    }

    private T Wrong<T>(string name, Phrase wanted, T instead)
    {
        var raw = fields[name].GetRawText();
        Fault ??= $"The field '{name}' has to be {wanted}, not {(raw.Length <= 40 ? raw : raw[..40] + "...")}.";
        return instead;
    }
}
