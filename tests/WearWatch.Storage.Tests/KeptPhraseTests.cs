using System.Globalization;
using Microsoft.EntityFrameworkCore;
using WearWatch.Phrases;
using WearWatch.Storage.Rows;
using WearWatch.Wear;

namespace WearWatch.Storage.Tests;

/// <summary>A notice keeps what it says with its facts, so that each reader reads it in a language of his or her own.</summary>
public sealed class KeptPhraseTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_kept_notice_is_said_in_another_language()
    {
        await using var store = await TemporaryDb.MakeAsync();
        var (share, day) = (2.85, new DateOnly(2027, 1, 14));
        await KeepAsync(store, $"{share:0.00} % of the limit, from {day} on");
        await using var db = store.CreateDbContext();
        var why = (await db.Notices.AsNoTracking().SingleAsync(Ct)).Why;
        Assert.Equal("2.85 % of the limit, from 14 Jan 2027 on", why.ToString());
        Assert.Equal("2.85 % der Grenze, ab 14 Jan 2027", why.In(form =>
            form == "{0} % of the limit, from {1} on" ? "{0} % der Grenze, ab {1}" : form, CultureInfo.InvariantCulture));
    }

    [Fact]
    public async Task A_notice_that_was_kept_as_a_sentence_is_read_as_it_was_written()
    {
        await using var store = await TemporaryDb.MakeAsync();
        await KeepAsync(store, $"Measure again.");
        await using (var db = store.CreateDbContext())
            await db.Database.ExecuteSqlAsync($"UPDATE \"Notices\" SET \"Why\" = {"It wears at 0.51 %, {fast}."}", Ct);
        await using var after = store.CreateDbContext();
        Assert.Equal("It wears at 0.51 %, {fast}.", (await after.Notices.SingleAsync(Ct)).Why.ToString());
    }

    private static async Task KeepAsync(TemporaryDb store, Phrase why)
    {
        await using var db = store.CreateDbContext();
        var chain = new ChainRow { Name = "K-1" };
        db.Chains.Add(chain);
        await db.SaveChangesAsync(Ct);
        db.Notices.Add(new NoticeRow
        {
            ChainId = chain.Id,
            Kind = NoticeKind.LimitNear,
            Why = why,
            WhatToDo = Phrase.None,
        });
        await db.SaveChangesAsync(Ct);
    }
}
