using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Plant.Intake;

/// <summary>Remembers which of our columns the columns of other programs' files are, as a person has said it once.</summary>
public sealed class ColumnNames(IDbContextFactory<WearDb> databases)
{
    /// <summary>A file with what is remembered of its columns; what a person says of it now goes before.</summary>
    /// <param name="file">The file, as text.</param>
    /// <param name="ct">Ends it.</param>
    public async Task<ImportFile> RecallAsync(ImportFile file, CancellationToken ct)
    {
        await using var db = await databases.CreateDbContextAsync(ct);
        var known = await db.ColumnNames.AsNoTracking().ToListAsync(ct);
        if (known.Count == 0 || file.Choice.Columns.Count > 0) return file;
        var header = FileHeader.Read(file);
        if (header.IsUsable && file.Choice.Kind is null) return file;
        var names = header.Names.Select(n => n.ToLowerInvariant()).ToHashSet();
        var kinds = file.Choice.Kind is { } kind ? FileColumns.Each.Where(c => c.Kind == kind) : FileColumns.Each;
        foreach (var columns in kinds)
        {
            var said = known.Where(k => k.Kind == columns.Kind.ToString() && names.Contains(k.Theirs))
                .ToDictionary(k => k.Theirs, k => k.Ours);
            var choice = file.Choice with { Kind = columns.Kind, Columns = said };
            if (said.Count > 0 && !columns.MissingIn(names.Select(choice.NameOf)).Any()) return file with { Choice = choice };
        }

        return file;
    }

    /// <summary>Remembers what a person said of the columns of a file that was taken in.</summary>
    public async Task RememberAsync(FileKind kind, FileChoice choice, CancellationToken ct)
    {
        if (kind == FileKind.Unknown || choice.Columns.Count == 0) return;
        await using var db = await databases.CreateDbContextAsync(ct);
        await using var transaction = await db.Database.BeginTransactionAsync(ct);
        var word = kind.ToString();
        var known = await db.ColumnNames.Where(n => n.Kind == word).ToDictionaryAsync(n => n.Theirs, ct);
        foreach (var (theirs, ours) in choice.Columns)
        {
            if (known.TryGetValue(theirs, out var row)) row.Ours = ours;
            else db.ColumnNames.Add(new ColumnNameRow { Kind = word, Theirs = theirs, Ours = ours });
        }

        await db.SaveChangesAsync(ct);
        await transaction.CommitAsync(ct);
    }
}
