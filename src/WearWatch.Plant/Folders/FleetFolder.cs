using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;

namespace WearWatch.Plant.Folders;

/// <summary>A folder of chains.csv, events.csv and readings.csv in memory, read and judged as an import does.</summary>
/// <remarks>
/// Readings that an import would keep waiting for a person are in: the track weighs them, since nobody can be asked.
/// </remarks>
public sealed class FleetFolder
{
    private readonly Dictionary<string, FolderChain> byName = [];
    private readonly Dictionary<string, ChainSoFar> soFar = [];
    private readonly List<RowRemark> remarks = [];
    private readonly DateTimeOffset now;
    private int lastLine = -1;

    private FleetFolder(DateTimeOffset now) => this.now = now;

    /// <summary>The chains in the order of the register.</summary>
    public IReadOnlyList<FolderChain> Chains => [.. byName.Values];

    /// <summary>What is to be said about rows.</summary>
    public IReadOnlyList<RowRemark> Remarks => remarks;

    /// <summary>Whether anything was refused.</summary>
    public bool HasRefusals => remarks.Exists(r => r.Kind == RemarkKind.Refused);

    /// <summary>The chain of a name, or null.</summary>
    public FolderChain? Find(string name) => byName.GetValueOrDefault(name);

    /// <summary>Reads a folder.</summary>
    /// <param name="path">The folder; events.csv may be missing in it.</param>
    /// <param name="now">The present, after which no reading can have been taken.</param>
    public static FleetFolder Read(string path, DateTimeOffset now)
    {
        var folder = new FleetFolder(now);
        folder.ReadFile(path, "chains.csv", FileKind.Chains, isNeeded: true, folder.TakeChain);
        folder.ReadFile(path, "events.csv", FileKind.Events, isNeeded: false, folder.TakeEvent);
        folder.ReadFile(path, "readings.csv", FileKind.Readings, isNeeded: true, folder.TakeReading);
        return folder;
    }

    private void ReadFile(string path, string name, FileKind kind, bool isNeeded, Action<FileItem, RemarkList> take)
    {
        var list = new RemarkList(name, most: int.MaxValue);
        var file = Path.Combine(path, name);
        if (!File.Exists(file))
        {
            if (isNeeded) list.Add(0, "", $"The file is missing in the folder.", RemarkKind.Refused);
        }
        else if (new PlantFile(ImportFile.OnDisk(file, ""), TimeZoneInfo.Utc) is var text && text.Kind != kind
            && text.Kind != FileKind.Unknown)
        {
            list.Add(1, "", $"The header is that of {text.Kind.ToString().ToLowerInvariant()}.csv.", RemarkKind.Refused);
        }
        else
        {
            foreach (var item in text.Rows())
            {
                list.Add(item);
                take(item, list);
            }
        }

        remarks.AddRange(list.Report(kind).Remarks);
    }

    private void TakeChain(FileItem item, RemarkList list)
    {
        if (item is FileItem.Chain chain && !byName.TryAdd(chain.Card.Name, new FolderChain(chain.Card)))
            list.Add(item.Line, "chain", $"The chain '{chain.Card.Name}' stands twice.", RemarkKind.Refused);
    }

    private void TakeEvent(FileItem item, RemarkList list)
    {
        if (item is not FileItem.Happened { Event: var happening }) return;
        if (!byName.TryGetValue(happening.Chain, out var chain)) ImportRun.RefuseUnknown(list, item.Line, happening.Chain);
        else if (!list.IsRepeated(Fingerprint.Of(happening), item.Line, isStored: false)) chain.Events.Add(happening);
    }

    private void TakeReading(FileItem item, RemarkList list)
    {
        // A row that cannot be read still counts among the chain's rows where its name can be told.
        if (item is FileItem.Unreadable { OfChain: { } name } && byName.TryGetValue(name, out var spoiled)
            && lastLine != item.Line) spoiled.Add(null);
        lastLine = item.Line;
        if (item is not FileItem.Measured { Reading: var reading }) return;
        if (!byName.TryGetValue(reading.Chain, out var chain))
        {
            ImportRun.RefuseUnknown(list, item.Line, reading.Chain);
            return;
        }

        if (!soFar.TryGetValue(reading.Chain, out var so)) soFar.Add(reading.Chain, so = chain.SoFar());
        var isRepeated = list.IsRepeated(Fingerprint.Of(reading), item.Line, isStored: false);
        var judgement = isRepeated ? new Judgement.Use() : ReadingJudge.Judge(reading, so, now);
        list.Add(item.Line, judgement);
        chain.Add(isRepeated || judgement is Judgement.Refuse ? null : reading);
        if (judgement is Judgement.Use) so.Add(reading);
    }
}
