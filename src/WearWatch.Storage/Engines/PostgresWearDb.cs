using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using WearWatch.Phrases;

namespace WearWatch.Storage.Engines;

/// <summary>The plant's memory in PostgreSQL. What differs from SQLite in the layout stands here, and nowhere else.</summary>
public sealed class PostgresWearDb(DbContextOptions<PostgresWearDb> options) : WearDb(options)
{
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        base.ConfigureConventions(configurationBuilder);
        // Names are ordered by their letters' codes, as SQLite orders them, whatever language the server was set up in.
        configurationBuilder.Properties<string>().UseCollation("C");
        configurationBuilder.Properties<Phrase>().UseCollation("C");
        // A time by the plant's wall clock has no zone.
        configurationBuilder.Properties<DateTime>().HaveColumnType("timestamp without time zone");
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        base.OnModelCreating(modelBuilder);
        foreach (var index in modelBuilder.Model.GetEntityTypes().SelectMany(e => e.GetIndexes()))
            if (index.GetFilter() is { } filter) index.SetFilter(Quoted(filter, index.DeclaringEntityType));
    }

    /// <summary>A condition with its columns in quotes: without them PostgreSQL reads names in small letters.</summary>
    private static string Quoted(string condition, IMutableEntityType entity) =>
        entity.GetProperties().Select(p => p.GetColumnName())
            .Aggregate(condition, (c, column) => Regex.Replace(c, $@"(?<!"")\b{Regex.Escape(column)}\b(?!"")", $"\"{column}\""));
}
