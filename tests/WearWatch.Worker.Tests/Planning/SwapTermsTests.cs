using WearWatch.Chains.Families;
using WearWatch.Planning.Supply;
using WearWatch.Planning.Swaps;
using WearWatch.Plant.Files;
using WearWatch.Plant.Intake;
using WearWatch.Plant.Planning;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>What a swap takes: by family and length, or as one chain needs it.</summary>
public sealed class SwapTermsTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_plants_own_hours_of_a_family_go_before_the_assumption()
    {
        await using var mill = await PlannedMill.OpenAsync();
        var inputs = mill.Get<PlanInputs>();
        Assert.Equal(
            [new SwapWorkLine(ChainFamily.Usual, ChainFamily.Usual.UsualSwap, IsOwn: false)], (await inputs.AskAsync(Ct)).Works);

        await inputs.SaveAsync(ChainFamily.Usual, new SwapWork(2, 1, 3), Ct);
        Assert.True(Assert.Single((await inputs.AskAsync(Ct)).Works).IsOwn);
        var swap = (await mill.DraftAsync()).Picture.Input.Tasks.Single(t => t.Chain == "P-1");
        Assert.Equal((3.0, 3), (swap.Hours, swap.People)); // 2 h, and 1 h for its 100 pitches
    }

    [Fact]
    public async Task Sprockets_that_go_with_a_chain_come_from_the_store_with_its_job_and_are_not_lost_by_waiting()
    {
        await using var mill = await PlannedMill.OpenAsync();
        await mill.Get<PlanInputs>().SaveAsync(new SwapTermsLine("D-1", "", "", 6, 2, WithSprockets: true), Ct);

        var swap = (await mill.DraftAsync()).Picture.Input.Tasks.Single(t => t.Chain == "D-1");
        Assert.Equal((6.0, 2, 0.0), (swap.Hours, swap.People, swap.SprocketPrice));
        Assert.Equal(["16B-1 z17", "16B-1 z57"], SprocketsOf(swap));

        var kept = await mill.Get<KeptPlan>().AskAsync(Ct);
        Assert.Equal(["16B-1 z17", "16B-1 z57"], SprocketsOf(kept.JobOf("D-1")!.Task));
        Assert.Equal((true, false), (kept.JobOf("D-1")!.Task.TakesSprockets, kept.JobOf("D-2")!.Task.TakesSprockets));
    }

    // Teeth at 2.4 of 3 mm are 80 % worn: no new chain runs its life on them.
    [Fact]
    public async Task Sprockets_whose_teeth_are_worn_go_with_the_chain_of_themselves()
    {
        await using var mill = await PlannedMill.OpenAsync();
        async Task<SwapTask> AskAsync() => (await mill.DraftAsync()).Picture.Input.Tasks.Single(t => t.Chain == "D-1");
        Assert.Empty(SprocketsOf(await AskAsync()));

        async Task ReadAsync(string mm)
        {
            var told = new PartAsWritten { Chain = "D-1", TakenAt = mill.Now, Part = "tooth_root", Value = mm, Limit = "3" };
            Assert.IsType<IntakeAnswer.Taken>(
                await mill.Get<PartDesk>().TakeAsync(new NewPartReading(told, "k" + mm, "Ina"), Ct));
        }

        await ReadAsync("1");
        Assert.Empty(SprocketsOf(await AskAsync()));
        await ReadAsync("2.4");
        var swap = await AskAsync();
        Assert.Equal(["16B-1 z17", "16B-1 z57"], SprocketsOf(swap));
        Assert.Equal(0, swap.SprocketPrice);
        Assert.True((await mill.DraftAsync()).Picture.Faces["D-1"].SprocketsAreWorn);
    }

    private static IEnumerable<string> SprocketsOf(SwapTask swap) =>
        swap.Needs.Where(n => n.Part.Kind == PartKind.Sprocket).Select(n => n.Part.Designation);
}
