using WearWatch.Planning.Supply;
using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>The work package of a stop holds all of its swaps, and their parts and hours add up.</summary>
public sealed class WorkPackageTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Its_parts_and_hours_are_those_of_its_swaps()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var draft = await mill.DraftAsync();
        var stop = draft.Board.Input.Windows.Where(w => w.Line == "Debarking").MinBy(w => w.Start)!;
        draft.Move("D-1", stop.Id);
        draft.Move("D-2", stop.Id);
        await mill.KeepAsync(draft);
        var view = await mill.Get<KeptPlan>().AskAsync(Ct);
        var package = WorkPackage.Of(view, stop.Id)!;
        Assert.Equal(["D-1", "D-2"], package.Steps.Select(s => s.Job.Face.Row.Name).Order());
        var chain = package.Picks.Single(p => p.Part == new Part(PartKind.Chain, "16B-1"));
        // 80 pitches are cut as 79 and a connecting link, 81 as 79, a connecting and an offset link; 160 are in stock.
        Assert.Equal((158, 160, 0), (chain.Quantity, chain.There!.Value, chain.Missing!.Value));
        Assert.Equal(2, package.Picks.Single(p => p.Part.Kind == PartKind.ConnectingLink).Quantity);
        Assert.Equal(package.Steps.Sum(s => s.Job.Task.CrewHours), package.HoursByFitter.Sum(), 9);
        Assert.Equal([79, 79], package.Cuts.Select(j => j.Cut.CutPitches));
    }

    [Fact]
    public async Task A_stop_without_a_swap_has_none_and_a_later_stop_finds_less_in_the_store()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var draft = await mill.DraftAsync();
        var stops = draft.Board.Input.Windows.Where(w => w.Line == "Debarking").OrderBy(w => w.Start).Take(3).ToArray();
        draft.Move("D-1", stops[0].Id);
        draft.Move("D-2", stops[1].Id);
        await mill.KeepAsync(draft);
        var view = await mill.Get<KeptPlan>().AskAsync(Ct);
        Assert.Null(WorkPackage.Of(view, stops[2].Id));
        var second = WorkPackage.Of(view, stops[1].Id)!.Picks.Single(p => p.Part.Kind == PartKind.Chain);
        Assert.Equal((79, 160 - 79), (second.Quantity, second.There!.Value));
    }
}
