using Microsoft.EntityFrameworkCore;
using WearWatch.Plant.Files;
using WearWatch.Storage;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Engineer.History.Tables;

/// <summary>All quarantines, releases and disposals of chains that lift.</summary>
internal static class LiftingStepTable
{
    public static HistoryTable Of(IDbContextFactory<WearDb> databases) => OfChain.Shape<LiftingStepRow>(s => s.Id)
        .Text("step", $"quarantined, released or disposed", x => FileWords.Of(x.Row.Kind))
        .Moment("at", $"when", x => x.Row.At)
        .Text("by", $"who", x => x.Row.By)
        .Text("reason", $"why", x => x.Row.Reason)
        .Text("closes", $"the findings that a release closes, with semicolons between",
            x => string.Join("; ", x.Row.Closes.Select(FileWords.Of)))
        .Whole("appointment", $"by which appointment a competent person released it", x => x.Row.AppointmentId)
        .Moment("received_at", $"when it arrived", x => x.Row.ReceivedAt)
        .Table("lifting_steps", $"What people did about the use of a chain that lifts.", databases,
            (db, after) => from step in db.LiftingSteps.AsNoTracking()
                           where step.Id > after
                           join chain in db.Chains on step.ChainId equals chain.Id
                           orderby step.Id
                           select new OfChain<LiftingStepRow>(step, chain.Name));
}
