using System.Text.Json.Serialization;
using WearWatch.Dashboard.Api.Wire;

namespace WearWatch.Dashboard.Api;

/// <summary>
/// The wire shapes, written without reflection; names as in the files: lower case with underscores, units at the end.
/// </summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower)]
[JsonSerializable(typeof(ChainPageJson))]
[JsonSerializable(typeof(ChainCardJson))]
[JsonSerializable(typeof(CardJson))]
[JsonSerializable(typeof(IReadOnlyList<CardChangeJson>))]
[JsonSerializable(typeof(IReadOnlyList<ReadingJson>))]
[JsonSerializable(typeof(ReadingEntryJson))]
[JsonSerializable(typeof(IReadOnlyList<EventJson>))]
[JsonSerializable(typeof(EventEntryJson))]
[JsonSerializable(typeof(DoubtJson))]
[JsonSerializable(typeof(WordJson))]
[JsonSerializable(typeof(FloorPackJson))]
[JsonSerializable(typeof(RoundHandEntryJson))]
[JsonSerializable(typeof(RoundHandJson))]
[JsonSerializable(typeof(InspectionEntryJson))]
[JsonSerializable(typeof(IReadOnlyList<InspectionJson>))]
[JsonSerializable(typeof(LinkMeasureEntryJson))]
[JsonSerializable(typeof(IReadOnlyList<LinkMeasureJson>))]
[JsonSerializable(typeof(LinkStateJson))]
[JsonSerializable(typeof(IReadOnlyList<LiftingJson>))]
[JsonSerializable(typeof(LiftingChainJson))]
[JsonSerializable(typeof(LiftingCardJson))]
[JsonSerializable(typeof(ExaminationJson))]
[JsonSerializable(typeof(LiftingStepJson))]
[JsonSerializable(typeof(TakenJson))]
[JsonSerializable(typeof(ForecastJson))]
[JsonSerializable(typeof(IReadOnlyList<NoticeJson>))]
[JsonSerializable(typeof(JudgementJson))]
[JsonSerializable(typeof(MeJson))]
[JsonSerializable(typeof(IReadOnlyList<OilDueJson>))]
[JsonSerializable(typeof(IReadOnlyList<OilUsedJson>))]
[JsonSerializable(typeof(PlantJson))]
[JsonSerializable(typeof(ImportJson))]
[JsonSerializable(typeof(IReadOnlyList<PastImportJson>))]
[JsonSerializable(typeof(IReadOnlyList<int>))]
[JsonSerializable(typeof(DateTimeOffset?))]
[JsonSerializable(typeof(double?))]
[JsonSerializable(typeof(int?))]
[JsonSerializable(typeof(bool?))]
internal sealed partial class ApiJson : JsonSerializerContext;
