using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Learning;
using WearWatch.Running;
using WearWatch.Storage;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Plant.Intake;

/// <summary>What one import, or its preview, knows while it goes through its files.</summary>
/// <param name="Database">The plant's memory.</param>
/// <param name="Stores">Whether rows are stored; a preview only counts them.</param>
/// <param name="Now">When it began.</param>
/// <param name="Calendar">When the plant runs.</param>
/// <param name="Model">What the chains of the plant have taught; null when there is none yet.</param>
internal sealed record ImportRun(
    IDbContextFactory<WearDb> Database, bool Stores, DateTimeOffset Now, ProductionCalendar Calendar, FleetModel? Model)
{
    /// <summary>The register: what is stored and what this import adds.</summary>
    public Dictionary<string, ChainCard> Cards { get; } = [];

    /// <summary>The rows of the stored chains.</summary>
    public Dictionary<string, int> Ids { get; } = [];

    /// <summary>The chains that have something new.</summary>
    public HashSet<int> Changed { get; } = [];

    /// <summary>The chains whose rows are being judged, and their neighbours on the line.</summary>
    public Dictionary<string, ChainSoFar> SoFar { get; } = [];

    /// <summary>The events of this import, in the order in which they happened.</summary>
    public HeldEvents Events => field ??= new HeldEvents(this);

    /// <summary>What is believed of a chain before its first reading.</summary>
    public WearPrior PriorFor(ChainCard card) => Model?.PriorFor(card) ?? WearPrior.Broad;

    public async Task LoadRegisterAsync(CancellationToken ct)
    {
        await using var db = await Database.CreateDbContextAsync(ct);
        await foreach (var chain in db.Chains.AsNoTracking().AsAsyncEnumerable().WithCancellation(ct)) Know(chain);
    }

    public void Know(ChainRow chain) => (Cards[chain.Name], Ids[chain.Name]) = (chain.ToCard(), chain.Id);

    /// <summary>Gets ready to judge rows of these chains beside their neighbours.</summary>
    public async Task MeetAsync(WearDb db, IEnumerable<string> names, CancellationToken ct)
    {
        var known = names.Where(Cards.ContainsKey).ToHashSet();
        if (known.All(SoFar.ContainsKey)) return;
        var lines = known.Select(n => Cards[n].Line).Where(line => line.Length > 0).ToHashSet();
        var unmet = known.Concat(Cards.Values.Where(c => lines.Contains(c.Line)).Select(c => c.Name))
            .Where(n => !SoFar.ContainsKey(n)).ToHashSet();
        var stored = await RawChain.LoadAsync(db, [.. unmet.Where(Ids.ContainsKey).Select(n => Ids[n])], ct);
        foreach (var raw in stored)
        {
            SoFar[raw.Card.Name] = new ChainSoFar(
                Cards[raw.Card.Name], raw.Events,
                raw.Readings.LastOrDefault(r => r.Counter is not null)?.Counter?.Hours,
                raw.Readings.LastOrDefault(r => r.TakenAt is not null)?.TakenAt)
            {
                Readings = raw.Readings,
                Ran = raw.Ran,
            };
        }

        foreach (var name in unmet.Where(n => !SoFar.ContainsKey(n))) SoFar[name] = new ChainSoFar(Cards[name], []);
    }

    /// <summary>The neighbours of a chain on its line.</summary>
    public IEnumerable<ChainSoFar> OnTheLineOf(ChainCard card) =>
        SoFar.Values.Where(so => card.Line.Length > 0 && so.Card.Line == card.Line && so.Card.Name != card.Name);

    /// <summary>Says that a chain is not registered.</summary>
    public static void RefuseUnknown(RemarkList remarks, int line, string chain) =>
        remarks.Add(line, "chain", $"The chain '{chain}' is not in the register. Import its row of chains.csv first.",
            RemarkKind.Refused);
}
