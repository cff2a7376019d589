using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Dashboard.Api.Wire;
using WearWatch.Dashboard.Kit.Lifting;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Lifting;
using WearWatch.Plant.Settings;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Api;

/// <summary>The register of lifting chains from and to the wire.</summary>
internal static class LiftingWire
{
    public static LiftingJson ToJson(
        ChainRow chain, LiftingState state, LiftingNow now, ExaminationInterval interval, DateOnly today) =>
        new()
        {
            Chain = chain.Name,
            Verdict = Tokens.Of(now.Verdict),
            Words = T[LiftingVerdicts.Words(now.Verdict)],
            Faults = [.. state.On(today).Select(f => new LiftingFaultJson(Tokens.Of(f.Kind), T[f.Words]))],
            Standing = Tokens.Of(state.Standing),
            HasCertificate = state.HasCertificate,
            LookedAt = state.LookedAt,
            MeasuredAt = state.MeasuredAt,
            ExaminedOn = state.ExaminedOn,
            ExaminationDue = state.ExaminationDue,
            RemedyBy = state.RemedyBy,
            IntervalMonths = interval.Months,
            IntervalSource = interval.Rule.Source,
            IntervalCertainty = T[interval.Rule.Certainty],
            Cautions = [.. Caution.For(chain.ToCard()).Select(c => T[c])],
        };

    public static LiftingCardJson ToJson(LiftingCardRow card) => new()
    {
        Id = card.Id,
        At = card.At,
        By = card.By,
        Why = card.Why,
        Use = Tokens.Of(card.Use),
        WorkingLoadKg = card.WorkingLoadKg,
        WorkingLoadOf = card.WorkingLoadOf,
        CertificateNumber = card.CertificateNumber,
        CertificateOn = card.CertificateOn,
        CertificateFile = card.CertificateFileId,
        ProofTestOn = card.ProofTestOn,
        ProofLoadKg = card.ProofLoadKg,
        ProofTestNumber = card.ProofTestNumber,
        Maker = card.Maker,
        Standard = card.Standard,
        Grade = card.Grade,
        TraceMark = card.TraceMark,
        ChainSet = card.ChainSet,
        Region = Tokens.Of(card.Region),
        LiftsPersons = card.LiftsPersons,
        HeavyUse = card.HeavyUse,
        LiftsPerWeek = card.LiftsPerWeek,
        ExaminationMonths = card.ExaminationMonths,
        WrittenScheme = card.WrittenScheme,
        WrittenSchemeFile = card.WrittenSchemeFileId,
    };

    /// <summary>The entry of a body; null with what cannot be read.</summary>
    public static LiftingCardRow? Card(LiftingCardJson body, string key, string by, List<Refusal> faults)
    {
        var use = Word<LiftingUse>("use", body.Use ?? Tokens.Of(LiftingUse.Truck), faults);
        var region = Word<LawRegion>("region", body.Region ?? Tokens.Of(LawRegion.NotSet), faults);
        return faults.Count > 0 ? null : new LiftingCardRow
        {
            Key = key,
            By = by,
            Why = body.Why ?? "",
            Use = use,
            WorkingLoadKg = body.WorkingLoadKg,
            WorkingLoadOf = body.WorkingLoadOf ?? "",
            CertificateNumber = body.CertificateNumber ?? "",
            CertificateOn = body.CertificateOn,
            CertificateFileId = body.CertificateFile,
            ProofTestOn = body.ProofTestOn,
            ProofLoadKg = body.ProofLoadKg,
            ProofTestNumber = body.ProofTestNumber ?? "",
            Maker = body.Maker ?? "",
            Standard = body.Standard ?? "",
            Grade = body.Grade ?? "",
            TraceMark = body.TraceMark ?? "",
            ChainSet = body.ChainSet ?? "",
            Region = region,
            LiftsPersons = body.LiftsPersons ?? false,
            HeavyUse = body.HeavyUse ?? false,
            LiftsPerWeek = body.LiftsPerWeek,
            ExaminationMonths = body.ExaminationMonths,
            WrittenScheme = body.WrittenScheme ?? "",
            WrittenSchemeFileId = body.WrittenSchemeFile,
        };
    }

    public static ExaminationJson ToJson(ExaminationRow report) => new()
    {
        Id = report.Id,
        On = report.On,
        Examiner = report.Examiner,
        ExaminerAddress = report.ExaminerAddress,
        Occasion = Tokens.Of(report.Occasion),
        Result = Tokens.Of(report.Result),
        Points =
        [
            .. report.Points.Select(p => new PointResultJson(Tokens.Of(p.Point), Tokens.Of(p.Outcome), p.Measured, p.Note)),
        ],
        Remarks = report.Remarks,
        RemedyBy = report.RemedyBy,
        NextOn = report.NextOn,
        ReportNumber = report.ReportNumber,
        File = report.FileId,
        CounterH = report.CounterH,
        ToldBy = report.ToldBy,
    };

    /// <summary>The report of a body; null with what cannot be read.</summary>
    public static NewExamination? Report(ExaminationJson body, string chain, string key, string by, List<Refusal> faults)
    {
        if (body.On is null) faults.Add(new("on", $"A day such as 2026-11-25."));
        var occasion = Word<ExaminationOccasion>("occasion", body.Occasion ?? Tokens.Of(ExaminationOccasion.Periodic), faults);
        var result = Word<ExaminationResult>("result", body.Result, faults);
        PointResult[] points =
        [
            .. (body.Points ?? []).Select(p => new PointResult(
                Word<InspectionPoint>("points", p.Point, faults), Word<PointOutcome>("points", p.Outcome, faults),
                p.Measured ?? "", p.Note ?? "")),
        ];
        return faults.Count > 0 ? null : new NewExamination
        {
            Key = key,
            Chain = chain,
            On = body.On!.Value,
            Examiner = body.Examiner ?? "",
            ExaminerAddress = body.ExaminerAddress ?? "",
            Occasion = occasion,
            Result = result,
            Points = points,
            Remarks = body.Remarks ?? "",
            RemedyBy = body.RemedyBy,
            NextOn = body.NextOn,
            ReportNumber = body.ReportNumber ?? "",
            FileId = body.File,
            CounterH = body.CounterH,
            ToldBy = by,
        };
    }

    public static LiftingStepJson ToJson(LiftingStepRow step) => new()
    {
        Id = step.Id,
        Kind = Tokens.Of(step.Kind),
        At = step.At,
        By = step.By,
        Reason = step.Reason,
        Closes = [.. step.Closes.Select(Tokens.Of)],
        Appointment = step.AppointmentId,
    };

    /// <summary>The value of a word; another word is a fault.</summary>
    public static T Word<T>(string field, string? word, List<Refusal> faults)
        where T : struct, Enum
    {
        if (Tokens.Read<T>(word) is { } value) return value;
        faults.Add(new(field, $"One of {Tokens.All<T>()}."));
        return default;
    }
}
