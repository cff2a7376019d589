using System.Globalization;
using WearWatch.Chains;
using WearWatch.Dashboard.Kit.Language;
using WearWatch.Dashboard.Kit.Words;
using WearWatch.Plant.Files;
using WearWatch.Plant.Register;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Administration.Register;

/// <summary>
/// A chain's card as it is being typed: text by column of chains.csv, what is wrong with it, which limit would govern.
/// </summary>
public sealed class CardForm
{
    private const string FittedAt = "fitted_at";

    /// <summary>The fields for a number; it is kept as files have it and typed by the rule of all pages.</summary>
    private static readonly IReadOnlyList<string> Numbers =
        [.. CardField.Groups.SelectMany(g => g.Fields).Where(f => f.IsNumber).Select(f => f.Column.Name)];

    private readonly PlantTime time;
    private readonly Dictionary<string, Phrase> questions = [];
    private Dictionary<string, string> shown;
    private Dictionary<string, string> typed;
    private string fittedAtKept = "";
    private CardReading reading = new(null, []);
    private IReadOnlyList<Refusal> refusals = [];
    private bool asked;

    private CardForm(ChainRow? row, PlantTime time)
    {
        this.time = time;
        shown = row is null ? Empty() : ShownOf(row);
        typed = new(shown);
        Revision = row?.Revision;
        Judge();
    }

    /// <summary>The state of the card from which the typing set out; null for a chain that is new.</summary>
    public int? Revision { get; private set; }

    public string By { get; set; } = "";

    public string Why { get; set; } = "";

    public bool IsNew => Revision is null;

    /// <summary>The card as far as it can be read; null without a pitch.</summary>
    public ChainCard? Card => reading.Card;

    /// <summary>The limit that would govern; null without a pitch.</summary>
    public LimitVerdict? Limit => Card is { } card ? LimitRules.For(card) : null;

    /// <summary>Whether something was typed that is not kept yet.</summary>
    public bool IsChanged => typed.Any(t => t.Value != shown.GetValueOrDefault(t.Key, ""));

    /// <summary>What the catalogue knows of the chain type.</summary>
    public Phrase TypeWords => this["chain_type"].Trim() is not { Length: > 0 } text ? Phrase.None
        : ChainCatalogue.Find(text) is not { } type ? Phrase.Of($"Not in the catalogue: write its family and pitch.")
        : type.PitchMm is not { } pitch ? Phrase.Of($"Made in several pitches: write one of "
            + $"{string.Join(", ", type.PitchChoicesMm.Take(6))} mm behind it, such as "
            + $"{type.Designation}x{type.PitchChoicesMm[0]:0.#}.")
        : $"{type.Family.Words} chain, {Show.Millimetres(pitch.Value)} pitch, strands: {type.Strands}; "
            + $"{type.Standard}.";

    /// <summary>The text in a field. A chain type that the catalogue knows fills in what follows from it.</summary>
    public string this[string column]
    {
        get => typed.GetValueOrDefault(column, "");
        set
        {
            typed[column] = value;
            if (column == "chain_type") FillFromType();
            refusals = [.. refusals.Where(r => r.Field != column)];
            Judge();
        }
    }

    /// <summary>An empty card.</summary>
    public static CardForm New(PlantTime time) => new(null, time);

    /// <summary>The card of a chain.</summary>
    public static CardForm Of(ChainRow row, PlantTime time) => new(row, time);

    /// <summary>What is wrong with a field; what is only missing is told once the person has asked to save.</summary>
    public string? Fault(string field) => questions.TryGetValue(field, out var question) ? T[question]
        : (asked || this[field].Trim().Length > 0)
            && reading.Faults.Concat(refusals).FirstOrDefault(f => f.Field == field) is { } refusal
        ? T[refusal.Reason]
        : null;

    /// <summary>The card to save; null when something is wrong, which then stands at its field.</summary>
    public ChainCard? ToSave()
    {
        asked = true;
        return reading.Faults.Count == 0 && questions.Count == 0 ? Card : null;
    }

    /// <summary>Shows what the register refused.</summary>
    public void Refuse(IReadOnlyList<Refusal> reasons) => refusals = reasons;

    /// <summary>Goes on from the card as another person left it: their changes come in, what was typed here stays.</summary>
    public void GoOnFrom(ChainRow now)
    {
        var before = shown;
        var own = typed.Where(t => t.Value != before.GetValueOrDefault(t.Key, "")).ToList();
        shown = ShownOf(now);
        typed = new(shown);
        foreach (var (column, text) in own) typed[column] = text;
        Revision = now.Revision;
        Judge();
    }

    private static Dictionary<string, string> Empty() => [];

    private Dictionary<string, string> ShownOf(ChainRow row)
    {
        var texts = CardText.Write(row.ToCard());
        fittedAtKept = texts[FittedAt];
        texts[FittedAt] = row.FittedAt is { } at
            ? TimeZoneInfo.ConvertTime(at, time.Zone).ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture)
            : "";
        foreach (var column in Numbers) texts[column] = Show.Written(texts[column]);
        return texts;
    }

    private void FillFromType()
    {
        if (ChainCatalogue.Find(this["chain_type"]) is not { } type) return;
        typed["family"] = type.Family.Name;
        typed["strands"] = type.Strands == 1 ? "" : RowFields.Text(type.Strands);
        if (type.PitchMm is { } pitch) typed["pitch_mm"] = TypedNumber.Text(pitch.Value);
    }

    /// <summary>People write teeth with commas; a moment that was not touched keeps its seconds.</summary>
    private void Judge()
    {
        var texts = new Dictionary<string, string>(typed) { ["sprocket_teeth"] = this["sprocket_teeth"].Replace(',', ' ') };
        questions.Clear();
        foreach (var column in Numbers.Where(texts.ContainsKey))
        {
            if (TypedNumber.WithPoints(texts[column], out var question) is { } plain) texts[column] = plain;
            else questions[column] = question;
        }

        if (fittedAtKept.Length > 0 && this[FittedAt] == shown.GetValueOrDefault(FittedAt, "")) texts[FittedAt] = fittedAtKept;
        reading = CardText.Read(texts, time.Zone);
    }
}
