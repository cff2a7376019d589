using WearWatch.Chains;
using WearWatch.Gauging;
using WearWatch.Links;
using WearWatch.Parts;
using WearWatch.Storage.Rows;
using WearWatch.Units;

namespace WearWatch.Plant.Intake;

/// <summary>Makes rows of what was told.</summary>
internal static class EntryRows
{
    public static ReadingRow Row(
        int chainId, Reading reading, (KeyOwner Owner, string Text) key, Judgement judgement, string by, DateTimeOffset now,
        long? corrects = null) => new()
        {
            ChainId = chainId,
            Key = key.Text,
            KeyOwner = key.Owner,
            Fingerprint = Fingerprint.Of(reading),
            TakenAt = reading.TakenAt,
            CounterH = reading.Counter?.Hours,
            Tool = reading.Tool,
            Place = reading.Place,
            Strand = reading.Strand,
            Taut = reading.Held.InPlaceTaut,
            LoadN = reading.Held.LoadNewtons,
            Pitches = reading.Pitches,
            LengthMm = reading.LengthMm,
            TemperatureC = reading.TemperatureC,
            LengthUncertaintyMm = reading.LengthUncertaintyMm,
            Written = reading.Written,
            Unit = reading.Unit,
            TakeUpMm = reading.TakeUpMm,
            Standing = judgement is Judgement.Wait ? ReadingStanding.Waiting : ReadingStanding.Accepted,
            WhyWaiting = judgement is Judgement.Wait wait ? wait.Why : Phrase.None,
            CorrectsId = corrects,
            ToldBy = by,
            ReceivedAt = now,
        };

    /// <summary>The same reading once more, as its own correction: a person's yes, or its withdrawal.</summary>
    public static ReadingRow Again(ReadingRow row, string key, string by, DateTimeOffset now, bool withdraws, string note) =>
        new()
        {
            ChainId = row.ChainId,
            Key = key,
            KeyOwner = KeyOwner.Program,
            Fingerprint = row.Fingerprint,
            TakenAt = row.TakenAt,
            CounterH = row.CounterH,
            Tool = row.Tool,
            Place = row.Place,
            Strand = row.Strand,
            Taut = row.Taut,
            LoadN = row.LoadN,
            Pitches = row.Pitches,
            LengthMm = row.LengthMm,
            TemperatureC = row.TemperatureC,
            LengthUncertaintyMm = row.LengthUncertaintyMm,
            Written = row.Written,
            Unit = row.Unit,
            TakeUpMm = row.TakeUpMm,
            Standing = ReadingStanding.Accepted,
            CorrectsId = row.Id,
            Withdraws = withdraws,
            Note = note,
            ToldBy = by,
            ReceivedAt = now,
        };

    /// <summary>The same event once more, as its withdrawal.</summary>
    public static EventRow Withdrawal(EventRow told, string by, DateTimeOffset now, string why) => new()
    {
        ChainId = told.ChainId,
        Key = FormattableString.Invariant($"withdraw-event:{told.Id}"),
        KeyOwner = KeyOwner.Program,
        Kind = told.Kind,
        At = told.At,
        CounterBeforeH = told.CounterBeforeH,
        CounterAfterH = told.CounterAfterH,
        Lot = told.Lot,
        Broke = told.Broke,
        PitchesOut = told.PitchesOut,
        NewPitches = told.NewPitches,
        NewTeeth = told.NewTeeth,
        TakeUpMm = told.TakeUpMm,
        OilMethod = told.OilMethod,
        OilGrade = told.OilGrade,
        OilAmountMl = told.OilAmountMl,
        Note = why,
        CorrectsId = told.Id,
        Withdraws = true,
        ToldBy = by,
        ReceivedAt = now,
    };

    public static EventRow Row(
        int chainId, ChainEvent happening, (KeyOwner Owner, string Text) key, string by, DateTimeOffset now) => new()
        {
            ChainId = chainId,
            Key = key.Text,
            KeyOwner = key.Owner,
            Fingerprint = Fingerprint.Of(happening),
            Kind = happening.Kind,
            At = happening.At,
            CounterBeforeH = happening.CounterBefore?.Hours,
            CounterAfterH = happening.CounterAfter?.Hours,
            Lot = happening.Lot,
            Broke = happening.Broke,
            PitchesOut = happening.PitchesOut,
            NewPitches = happening.NewPitches,
            NewTeeth = happening.NewTeeth,
            TakeUpMm = happening.TakeUpMm,
            OilMethod = happening.Oil.Method,
            OilGrade = happening.Oil.Grade,
            OilAmountMl = happening.Oil.AmountMl,
            Note = happening.Note,
            ToldBy = by,
            ReceivedAt = now,
        };

    /// <summary>The row of measures of links.</summary>
    /// <param name="chainId">The chain.</param>
    /// <param name="told">The measures, understood.</param>
    /// <param name="entry">As they were told.</param>
    /// <param name="outerEdges">Whether the length over several links was taken over outer edges.</param>
    /// <param name="now">When they came.</param>
    /// <param name="corrects">The row whose place they take; null for none.</param>
    /// <param name="why">Why they do, or empty.</param>
    public static LinkMeasureRow Row(
        int chainId, MeasuredLinks told, NewLinkMeasures entry, bool outerEdges, DateTimeOffset now, long? corrects = null,
        string why = "") => new()
        {
            ChainId = chainId,
            Key = entry.Key,
            KeyOwner = entry.KeyOwner,
            TakenAt = told.TakenAt,
            CounterH = told.Counter?.Hours,
            Place = told.Place,
            Tool = told.Tool,
            OneLinkMm = told.OneLinkMm,
            SeveralLinksMm = told.SeveralLinksMm,
            Links = told.Links,
            OuterEdges = outerEdges,
            D1Mm = told.D1Mm,
            D2Mm = told.D2Mm,
            Written = entry.Written,
            CorrectsId = corrects,
            Note = why,
            ToldBy = entry.ToldBy,
            ReceivedAt = now,
        };

    /// <summary>The row of a part's reading.</summary>
    /// <param name="chainId">The chain.</param>
    /// <param name="told">The reading, understood.</param>
    /// <param name="entry">As it was told.</param>
    /// <param name="now">When it came.</param>
    public static PartReadingRow Row(int chainId, PartReading told, NewPartReading entry, DateTimeOffset now) => new()
    {
        ChainId = chainId,
        Key = entry.Key,
        KeyOwner = entry.KeyOwner,
        TakenAt = told.TakenAt,
        CounterH = told.Counter?.Hours,
        Part = told.Part,
        Place = told.Place,
        Mm = told.Mm,
        NewMm = told.Told.NewMm,
        LimitMm = told.Told.LimitMm,
        LimitSource = told.Told.LimitSource,
        Written = LengthText.WithUnit(entry.Told.Value.Trim(), entry.Told.Unit),
        ToldBy = entry.ToldBy,
        ReceivedAt = now,
    };

    /// <summary>The same reading once more, as its withdrawal.</summary>
    public static PartReadingRow Withdrawal(PartReadingRow row, string by, DateTimeOffset now, string why) => new()
    {
        ChainId = row.ChainId,
        Key = FormattableString.Invariant($"withdraw-part:{row.Id}"),
        KeyOwner = KeyOwner.Program,
        TakenAt = row.TakenAt,
        CounterH = row.CounterH,
        Part = row.Part,
        Place = row.Place,
        Mm = row.Mm,
        Written = row.Written,
        CorrectsId = row.Id,
        Withdraws = true,
        Note = why,
        ToldBy = by,
        ReceivedAt = now,
    };
}
