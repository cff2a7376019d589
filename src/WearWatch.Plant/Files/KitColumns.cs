using WearWatch.Chains;
using Column = WearWatch.Plant.Files.FileColumn<WearWatch.Chains.ChainCard>;

namespace WearWatch.Plant.Files;

/// <summary>What a card tells of material, place, group and spare kit.</summary>
internal static class KitColumns
{
    /// <summary>The heading under which a form asks for it.</summary>
    public static Phrase Heading { get; } = $"Material and spare kit";

    /// <summary>The fields in the order in which a person asks for them.</summary>
    public static IReadOnlyList<Column> Fields { get; } =
    [
        Column.Word("material", FileWords.Materials, c => c.Material == ChainMaterial.Steel ? null : c.Material,
                (c, v) => c with { Material = v ?? ChainMaterial.Steel }, always: false) with
        {
            Meaning = "stainless, plated or plastic; steel when left out",
            Asked = new(Heading, $"Material")
            {
                Choices =
                [
                    ("", $"steel"), (FileWords.Of(ChainMaterial.Stainless), $"stainless steel"),
                    (FileWords.Of(ChainMaterial.Plated), $"plated or coated"), (FileWords.Of(ChainMaterial.Plastic), $"plastic"),
                ],
            },
        },
        Column.Word("oil_place", FileWords.OilPlaces, c => c.OilPlace == OilPlace.Ordinary ? null : c.OilPlace,
                (c, v) => c with { OilPlace = v ?? OilPlace.Ordinary }, always: false) with
        {
            Meaning = "what its place asks of its oil: food, explosive_atmosphere or dry_film",
            Asked = new(Heading, $"Place, for its oil")
            {
                Choices =
                [
                    ("", $"ordinary"), (FileWords.Of(OilPlace.Food), $"food or packaging: H1 only"),
                    (FileWords.Of(OilPlace.ExplosiveAtmosphere), $"explosive atmosphere"),
                    (FileWords.Of(OilPlace.DryFilm), $"no wet oil: dry film"),
                ],
            },
        },
        Column.Number("group_difference_mm", 0.1, 10_000, c => c.GroupDifferenceMm,
                (c, v) => c with { GroupDifferenceMm = v }, always: false) with
        {
            Meaning = "by how much it may differ in length from the chains of its group",
            Asked = new(Heading, $"Difference in its group", $"mm", $"of length, to the chains that run together with it"),
        },
        Column.Text("attachments", c => c.Kit.Attachments,
                (c, v) => c with { Kit = c.Kit with { Attachments = v } }, always: false) with
        {
            Meaning = "attachments and their pattern",
            Asked = new(Heading, $"Attachments", Hint: $"such as K1 every 4th pitch"),
        },
        Column.Text("store_number", c => c.Kit.StoreNumber,
                (c, v) => c with { Kit = c.Kit with { StoreNumber = v } }, always: false)
            with { Meaning = "the store's number of it", Asked = new(Heading, $"Store number") },
        Column.Text("sprocket_number", c => c.Kit.SprocketNumber,
                (c, v) => c with { Kit = c.Kit with { SprocketNumber = v } }, always: false)
            with
        {
            Meaning = "the number of its sprockets, the store's or the maker's",
            Asked = new(Heading, $"Sprocket number"),
        },
    ];
}
