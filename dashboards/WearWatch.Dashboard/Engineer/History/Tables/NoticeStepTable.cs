using System.Globalization;
using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>What was done about notices.</summary>
internal static class NoticeStepTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => OfChain.Shape<NoticeStepRow>(s => s.Id)
        .Whole("notice_id", $"number of the notice", x => x.Row.NoticeId)
        .Text("step", $"acknowledged, assigned, snoozed, commented, woken or worsened", x => FileWords.Of(x.Row.Kind))
        .Moment("at", $"when", x => x.Row.At)
        .Text("by", $"who", x => x.Row.By)
        .Text("person", $"to whom it was assigned", x => x.Row.Person)
        .Text("until", $"until which day it was snoozed", x => Day(x.Row.Until))
        .Text("comment", $"what was said beside it", x => x.Row.Comment)
        .Table("notice_steps", $"What was done about notices.", databases,
            (db, after) => from step in db.NoticeSteps.AsNoTracking()
                           where step.Id > after
                           join notice in db.Notices on step.NoticeId equals notice.Id
                           join chain in db.Chains on notice.ChainId equals chain.Id
                           orderby step.Id
                           select new OfChain<NoticeStepRow>(step, chain.Name));

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
