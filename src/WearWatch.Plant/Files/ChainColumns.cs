using WearWatch.Chains;
using WearWatch.Chains.Families;
using Column = WearWatch.Plant.Files.FileColumn<WearWatch.Chains.ChainCard>;

namespace WearWatch.Plant.Files;

/// <summary>
/// The one list of what a chain's card tells, beside its name: chains.csv, the record of changes, the history's table, the
/// API and the form of the register follow from it.
/// </summary>
public static class ChainColumns
{
    /// <summary>The heading under which a form asks for the name and the place.</summary>
    public static Phrase WhereItRuns { get; } = $"Where it runs";

    /// <summary>The heading under which a form asks what the chain is.</summary>
    public static Phrase WhatItIs { get; } = $"What it is";

    /// <summary>The heading under which a form asks for oil and dust.</summary>
    public static Phrase OilAndDust { get; } = $"Lubrication and dust";

    private static Phrase Sprockets { get; } = $"Sprockets and take-up";
    private static Phrase WhatItDoes { get; } = $"Duty";
    private static Phrase OwnLimit { get; } = $"Own limit";

    /// <summary>The headings in the order in which a form has them.</summary>
    public static IReadOnlyList<Phrase> Headings { get; } =
        [WhereItRuns, WhatItIs, Sprockets, WhatItDoes, OilAndDust, KitColumns.Heading, OwnLimit, LinkColumns.Heading];

    /// <summary>The chain's name, with which a row begins; it tells which card.</summary>
    public static Column Name { get; } =
        Column.Text("chain", c => c.Name, (c, v) => c with { Name = v }) with { Asked = new(WhereItRuns, $"Name on the label") };

    /// <summary>The fields of a card in the order in which a person asks for them.</summary>
    public static IReadOnlyList<Column> Fields { get; } =
    [
        Column.Text("line", c => c.Line, (c, v) => c with { Line = v })
            with { Meaning = "production line", Asked = new(WhereItRuns, $"Line") },
        Column.Text("position", c => c.Position, (c, v) => c with { Position = v })
            with { Meaning = "where on the line", Asked = new(WhereItRuns, $"Position") },

        Column.Text("chain_type", c => c.ChainType, (c, v) => c with { ChainType = v })
            with { Meaning = "designation", Asked = new(WhatItIs, $"Chain type", Hint: $"such as 16B-1, 80, C2060") },
        new("family", ColumnKind.Text, c => c.Family.Name, (_, c) => c)
        {
            // What a row means by it depends on the designation, too: FamilyText reads it.
            Always = false,
            Usual = ChainFamily.Usual.Name,
            TellsUsual = true,
            Meaning = "kind of chain",
            Asked = new(WhatItIs, $"Family", Hint: $"asked for where the catalogue does not know the chain type")
            {
                Choices = [("", $"not recorded"), .. ChainFamily.All.Select(f => (f.Name, f.Words))],
            },
        },
        Column.Number("pitch_mm", 0.001, 2000, c => c.PitchMm, (c, v) => v is { } mm ? c with { PitchMm = mm } : c)
            with { Meaning = "nominal pitch", Asked = new(WhatItIs, $"Pitch", $"mm") },
        Column.Whole("pitches", 1, 1_000_000, c => c.Pitches, (c, v) => c with { Pitches = v })
            with { Meaning = "length in pitches", Asked = new(WhatItIs, $"Length of the chain", $"pitches") },
        new("sprocket_teeth", ColumnKind.Text, c => string.Join(' ', c.SprocketTeeth),
            (row, c) => c with { SprocketTeeth = row.Teeth("sprocket_teeth") })
        {
            Always = false,
            IsList = true,
            Meaning = "teeth of its sprockets, with spaces between",
            Asked = new(Sprockets, $"Sprocket teeth", Hint: $"such as 17 75"),
        },
        Column.Moment("fitted_at", c => c.FittedAt, (c, v) => c with { FittedAt = v })
            with { Meaning = "first recorded fitting", Asked = new(WhatItIs, $"Fitted at", Hint: $"plant time") },
        Column.Number("fitted_counter_h", 0, RowFields.MostCounterH, c => c.FittedCounter?.Hours,
                (c, v) => c with { FittedCounter = RowFields.Hours(v) })
            with { Meaning = "hour counter then", Asked = new(WhatItIs, $"Hour counter at fitting", $"h") },
        Column.Text("lot", c => c.Lot, (c, v) => c with { Lot = v }, always: false) with
        {
            Meaning = "supplier's lot of the first recorded chain",
            Asked = new(WhatItIs, $"Supplier's lot", Hint: $"of the first recorded chain, from its tag"),
        },
        Column.Number("limit_pct", 0.01, 9.99, c => c.LimitPercent, (c, v) => c with { LimitPercent = v }) with
        {
            Meaning = "limit that the plant set itself",
            Asked = new(OwnLimit, $"Replacement limit set by the plant", $"%", $"left out: the rules decide"),
        },
        Column.Text("limit_set_reason", c => c.LimitSetReason, (c, v) => c with { LimitSetReason = v }, always: false)
            with { Meaning = "why it did", Asked = new(OwnLimit, $"Why this limit", Hint: $"needed with a limit of your own") },
        Column.Whole("strands", 1, ChainCard.MostStrands, c => c.Strands, (c, v) => c with { Strands = v ?? 1 }, always: false)
            with { Usual = "1", Meaning = "how many strands it has", Asked = new(WhatItIs, $"Strands", Hint: $"left out: 1") },

        Column.Flag("fixed_centres", c => c.FixedCentres, (c, v) => c with { FixedCentres = v }) with
        {
            Meaning = "whether the shafts cannot be moved",
            Asked = new(Sprockets, $"fixed centres: nothing takes up the slack"),
        },
        Column.Flag("runs_in_parallel", c => c.RunsInParallel, (c, v) => c with { RunsInParallel = v }) with
        {
            Meaning = "whether it runs beside others that must keep pace",
            Asked = new(WhatItDoes, $"runs in parallel with another that must stay alike"),
        },
        Column.Flag("timing", c => c.Timing, (c, v) => c with { Timing = v })
            with { Meaning = "whether it times an engine", Asked = new(WhatItDoes, $"timing chain of an engine") },
        Column.Flag("positioning", c => c.Positioning, (c, v) => c with { Positioning = v }) with
        {
            Meaning = "whether it positions something",
            Asked = new(WhatItDoes, $"positions, or keeps two shafts in step"),
        },
        Column.Flag("high_performance", c => c.HighPerformance, (c, v) => c with { HighPerformance = v }) with
        {
            Meaning = "whether its drive is a high-performance one",
            Asked = new(WhatItDoes, $"high-performance drive"),
        },
        Column.Flag("lifts", c => c.Lifts, (c, v) => c with { Lifts = v })
            with { Meaning = "whether it lifts or holds a load", Asked = new(WhatItDoes, $"lifts or holds a load") },
        Column.Text("not_lifting_reason", c => c.NotLiftingReason, (c, v) => c with { NotLiftingReason = v }, always: false) with
        {
            Meaning = "why it lifts nothing although its kind does",
            Asked = new(WhatItDoes, $"Why it lifts nothing", Hint: $"of a kind that lifts, such as a bucket elevator's links"),
        },
        Column.Number("centre_distance_mm", 0.001, 1e7, c => c.CentreDistanceMm,
                (c, v) => c with { CentreDistanceMm = v }, always: false)
            with { Meaning = "distance of the shafts", Asked = new(Sprockets, $"Centre distance", $"mm") },
        Column.Number("take_up_travel_mm", 0, 1e5, c => c.TakeUpTravelMm, (c, v) => c with { TakeUpTravelMm = v }, always: false)
            with
        {
            Meaning = "how far the take-up can move",
            Asked = new(Sprockets, $"Take-up travel", $"mm", $"from where a new chain is taut"),
        },

        Column.Number("load_rel", 0.001, 20, c => c.Duty.RelativeLoad,
                (c, v) => c with { Duty = c.Duty with { RelativeLoad = v } }) with
        {
            Meaning = "bearing pressure over the permissible",
            Asked = new(WhatItDoes, $"Relative load", Hint: $"bearing pressure over the permissible; usual 0.5"),
        },
        Column.Number("speed_m_s", 0.0001, 100, c => c.Duty.SpeedMetresPerSecond,
                (c, v) => c with { Duty = c.Duty with { SpeedMetresPerSecond = v } })
            with { Meaning = "chain speed", Asked = new(WhatItDoes, $"Chain speed", $"m/s") },
        Column.Word("lubrication", FileWords.Lubrication, c => c.Duty.Lubrication,
                (c, v) => c with { Duty = c.Duty with { Lubrication = v } })
            with
        {
            Meaning = "auto, manual, poor or dry",
            Asked = Chosen($"Lubrication", FileWords.Lubrication, DutyWords.Of),
        },
        Column.Word("dust", FileWords.Dust, c => c.Duty.Dust, (c, v) => c with { Duty = c.Duty with { Dust = v } })
            with { Meaning = "clean, moderate or heavy", Asked = Chosen($"Dust", FileWords.Dust, DutyWords.Of) },
        Column.Number("ambient_c", -60, 400, c => c.Duty.AmbientC,
                (c, v) => c with { Duty = c.Duty with { AmbientC = v } }, always: false) with
        {
            Meaning = "temperature around it",
            Asked = new(OilAndDust, $"Temperature of the surroundings", $"°C", $"left out: the middle of the readings'"),
        },
        Column.Word("oil_method", FileWords.OilMethods, c => c.OilMethod, (c, v) => c with { OilMethod = v }, always: false)
            with { Meaning = "how it is lubricated", Asked = Chosen($"Lubrication method", FileWords.OilMethods, DutyWords.Of) },
        Column.Text("oil_grade", c => c.OilGrade, (c, v) => c with { OilGrade = v }, always: false)
            with { Meaning = "with which oil", Asked = new(OilAndDust, $"Oil used here", Hint: $"left out: by the tables") },
        Column.Number("oiling_interval_h", 0.001, 100_000, c => c.OilingIntervalHours,
                (c, v) => c with { OilingIntervalHours = v }, always: false) with
        {
            Meaning = "the plant's own running hours between two lubrications",
            Asked = new(OilAndDust, $"Own lubrication interval", $"running h", $"left out: the handbook's"),
        },
        Column.Number("oiling_surroundings_factor", 0.05, 20, c => c.OilingSurroundingsFactor,
                (c, v) => c with { OilingSurroundingsFactor = v ?? 1 }, always: false) with
        {
            Usual = "1",
            Meaning = "factor on the handbook's interval",
            Asked = new(OilAndDust, $"Factor for the surroundings", Hint: $"left out: 1; 0.5 halves the interval"),
        },

        .. KitColumns.Fields,
        .. LinkColumns.Fields,
    ];

    /// <summary>The columns of chains.csv after the name: those of the agreed format first; the others may be left out.</summary>
    public static IReadOnlyList<Column> All { get; } = [.. Fields.OrderBy(c => !c.Always)];

    private static AskedField Chosen<T>(Phrase name, IEnumerable<KeyValuePair<string, T>> words, Func<T, Phrase> of)
        where T : struct, Enum =>
        new(OilAndDust, name)
        {
            Choices = [("", $"not known"), .. words.OrderBy(w => w.Value).Select(w => (w.Key, of(w.Value)))],
        };
}
