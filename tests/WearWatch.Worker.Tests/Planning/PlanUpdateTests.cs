using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>Two planners on one plan: what one saves comes onto the other's board, and no move is lost unseen.</summary>
public sealed class PlanUpdateTests
{
    [Fact]
    public async Task Moves_of_other_chains_stay_and_of_the_same_chain_the_kept_decision_stands()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var (mine, other) = (await mill.DraftAsync(), await mill.DraftAsync());
        var stops = mine.Board.Input.Windows.Where(w => w.Line == "Debarking").OrderBy(w => w.Start).Select(w => w.Id).ToArray();
        mine.Move("D-1", stops[0]);
        mine.Move("D-2", stops[0]);
        other.Move("D-1", stops[1]);
        await mill.KeepAsync(other);
        var refused = await mill.Get<PlanKeeping>().KeepAsync(mine, "second", TestContext.Current.CancellationToken);
        Assert.IsType<PlanAnswer.Overtaken>(refused);
        var update = PlanUpdate.Of(mine, (await mill.DraftAsync()).Picture);
        Assert.Equal(["D-1"], update.Others);
        Assert.Equal(["D-1"], update.Conflicts);
        Assert.Equal((stops[1], stops[0]), (update.Draft.Windows["D-1"], update.Draft.Windows["D-2"]));
        Assert.Equal(1, await mill.KeepAsync(update.Draft));
    }

    [Fact]
    public async Task The_same_move_on_both_boards_is_no_conflict()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var (mine, other) = (await mill.DraftAsync(), await mill.DraftAsync());
        var stop = mine.Board.Input.Windows.First(w => w.Line == "Press").Id;
        mine.Move("P-1", stop);
        other.Move("P-1", stop);
        await mill.KeepAsync(other);
        var update = PlanUpdate.Of(mine, (await mill.DraftAsync()).Picture);
        Assert.Empty(update.Conflicts);
        Assert.False(update.Draft.IsChanged);
    }
}
