using WearWatch.Chains.Families;
using WearWatch.Plant.Files;

namespace WearWatch.Dashboard.Kit.Words;

/// <summary>How a field of the card is filled in.</summary>
public enum FieldKind
{
    Text,
    Number,
    Moment,
    YesOrNo,
    OneOf,
}

/// <summary>A field of the card as a person reads it.</summary>
/// <param name="Column">Its column of chains.csv.</param>
/// <param name="Name">Its name.</param>
/// <param name="Unit">Its unit, or empty.</param>
/// <param name="Hint">What to write there, or what holds when it is left out.</param>
/// <param name="Kind">How it is filled in.</param>
public sealed record CardField(string Column, string Name, string Unit = "", string Hint = "", FieldKind Kind = FieldKind.Number)
{
    /// <summary>What can be chosen: the word of the file and the word on the screen.</summary>
    public IReadOnlyList<(string Word, string Text)> Choices { get; init; } = [];

    /// <summary>The card's fields, group by group in the order in which a person knows them.</summary>
    public static IReadOnlyList<(string Heading, IReadOnlyList<CardField> Fields)> Groups { get; } =
    [
        ("Where it runs",
        [
            new("chain", "Name on the label", Kind: FieldKind.Text),
            new("line", "Line", Kind: FieldKind.Text),
            new("position", "Position", Kind: FieldKind.Text),
        ]),
        ("What it is",
        [
            new("chain_type", "Chain type", Hint: "such as 16B-1, 80, C2060", Kind: FieldKind.Text),
            new("family", "Family", Kind: FieldKind.OneOf) { Choices = [.. ChainFamily.All.Select(f => (f.Name, f.Words))] },
            new("pitch_mm", "Pitch", "mm"),
            new("strands", "Strands", Hint: "left out: 1"),
            new("pitches", "Length of the chain", "pitches"),
            new("lot", "Supplier's lot", Hint: "of the first recorded chain, from its tag", Kind: FieldKind.Text),
            new("fitted_at", "Fitted at", Hint: "plant time", Kind: FieldKind.Moment),
            new("fitted_counter_h", "Hour counter at fitting", "h"),
        ]),
        ("Sprockets and take-up",
        [
            new("sprocket_teeth", "Sprocket teeth", Hint: "such as 17 75", Kind: FieldKind.Text),
            new("centre_distance_mm", "Centre distance", "mm"),
            new("take_up_travel_mm", "Take-up travel", "mm", "from where a new chain is taut"),
            new("fixed_centres", "fixed centres: nothing takes up the slack", Kind: FieldKind.YesOrNo),
        ]),
        ("What it has to do",
        [
            new("load_rel", "Relative load", Hint: "bearing pressure over the permissible; usual 0.5"),
            new("speed_m_s", "Chain speed", "m/s"),
            new("runs_in_parallel", "runs in parallel with another that must stay alike", Kind: FieldKind.YesOrNo),
            new("timing", "timing chain of an engine", Kind: FieldKind.YesOrNo),
            new("positioning", "positions, or keeps two shafts in step", Kind: FieldKind.YesOrNo),
            new("high_performance", "high-performance drive", Kind: FieldKind.YesOrNo),
            new("lifts", "lifts or holds a load", Kind: FieldKind.YesOrNo),
        ]),
        ("Oil and dust",
        [
            new("lubrication", "How it is oiled", Kind: FieldKind.OneOf)
            {
                Choices = [("", "not known"), .. Words(FileWords.Lubrication, TradeWords.Of)],
            },
            new("dust", "Dust", Kind: FieldKind.OneOf) { Choices = [("", "not known"), .. Words(FileWords.Dust, TradeWords.Of)] },
            new("ambient_c", "Temperature of the surroundings", "°C", "left out: the middle of the readings'"),
            new("oil_method", "How the oil gets there", Kind: FieldKind.OneOf)
            {
                Choices = [("", "not known"), .. Words(FileWords.OilMethods, TradeWords.Of)],
            },
            new("oil_grade", "Oil used here", Hint: "left out: by the tables", Kind: FieldKind.Text),
            new("oiling_interval_h", "Own oiling interval", "running h", "left out: the handbook's"),
            new("oiling_surroundings_factor", "Factor for the surroundings", Hint: "left out: 1; 0.5 halves the interval"),
        ]),
        ("Own limit",
        [
            new("limit_pct", "Replacement limit set by the plant", "%", "left out: the rules decide"),
            new("limit_set_reason", "Why this limit", Hint: "needed with a limit of your own", Kind: FieldKind.Text),
        ]),
    ];

    /// <summary>The field of a column.</summary>
    public static CardField? Of(string column) => Groups.SelectMany(g => g.Fields).FirstOrDefault(f => f.Column == column);

    /// <summary>What stands in the field, in words and with its unit; a dash for nothing.</summary>
    public string Said(string text) => Kind switch
    {
        FieldKind.YesOrNo => text == "yes" ? "yes" : "no",
        FieldKind.OneOf when Choices.FirstOrDefault(c => c.Word == text).Text is { } word => word,
        _ when text.Length == 0 => Show.Nothing,
        FieldKind.Number when Unit.Length > 0 => $"{text} {Unit}",
        _ => text,
    };

    private static IReadOnlyList<(string Word, string Text)> Words<T>(
        IEnumerable<KeyValuePair<string, T>> words, Func<T, string> of)
        where T : struct, Enum => [.. words.OrderBy(w => w.Value).Select(w => (w.Key, of(w.Value)))];
}
