using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>All notices, open and ended.</summary>
internal static class NoticeTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => OfChain.Shape<NoticeRow>(n => n.Id)
        .Text("kind", $"what it is about", x => FileWords.Of(x.Row.Kind))
        .YesNo("urgent", $"whether to act now", x => x.Row.Urgent)
        .Text("why", $"the reason with its numbers", x => x.Row.Why.ToString())
        .Text("what_to_do", $"what it asks for", x => x.Row.WhatToDo.ToString())
        .Moment("raised_at", $"when it was raised", x => x.Row.RaisedAt)
        .Moment("ended_at", $"when it ended", x => x.Row.EndedAt)
        .YesNo("judged_real", $"a person's judgement", x => x.Row.JudgedReal)
        .Text("judged_by", $"whose", x => x.Row.JudgedBy)
        .YesNo("acknowledged", $"whether a person has seen it and deals with it", x => x.Row.Acknowledged)
        .Moment("snoozed_until", $"until when it is snoozed", x => x.Row.SnoozedUntil)
        .Text("assigned_to", $"who deals with it", x => x.Row.AssignedTo)
        .Table("notices", $"Something that asked for attention, with what a person made of it.", databases,
            (db, after) => from notice in db.Notices.AsNoTracking()
                           where notice.Id > after
                           join chain in db.Chains on notice.ChainId equals chain.Id
                           orderby notice.Id
                           select new OfChain<NoticeRow>(notice, chain.Name));
}
