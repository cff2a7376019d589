using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;

namespace WearWatch.Worker.Tests.Planning;

/// <summary>Whatever people do at the board, what is kept leaves no chain that holds a load in use past its date.</summary>
public sealed class HeldLoadWalkTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    // Oracle: the rows that are kept, against the dates of the forecasts.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public async Task Random_moves_locks_steps_back_and_suppositions_keep_the_dates(int seed)
    {
        await using var mill = await HoistMill.OpenAsync(dueInDays: 30);
        var (dice, dates) = (new Random(seed), new Dictionary<string, DateTimeOffset> { ["D-1"] = mill.Now.AddDays(30) });
        for (var round = 0; round < 5; round++)
        {
            var draft = await mill.DraftAsync();
            for (var step = 0; step < 60; step++) Do(draft, dice);
            draft.Suppose(null);
            AssertKept(draft, dates);
            if (round == 2)
            {
                dates["D-1"] = mill.Now.AddDays(12 + dice.Next(10));
                await HoistMill.ForecastAsync(mill, "D-1", 500, dates["D-1"]);
            }

            // After a nearer date the board is either refused as it stands, or holds nothing late.
            await mill.Get<PlanKeeping>().KeepAsync(draft, "planner", Ct);
            AssertKept(await mill.DraftAsync(), dates);
        }

        await using var db = mill.Db();
        var load = db.Chains.Single(c => c.Name == "D-1").Id;
        Assert.All(db.Swaps.Where(s => s.ChainId == load && s.Outcome == SwapEnd.Planned && s.Start != null).ToArray(),
            s => Assert.True(s.Start <= dates["D-1"]));
    }

    private static void AssertKept(PlanDraft draft, Dictionary<string, DateTimeOffset> dates)
    {
        foreach (var (chain, by) in dates)
        {
            var placement = draft.Plan.Placements.Single(p => p.Chain == chain);
            Assert.True(placement.Window is { } window ? window.Start <= by : placement.OutOfUseFrom == by);
            Assert.Equal(draft.PlaceOf(chain).WindowId, placement.Window?.Id);
        }
    }

    private static void Do(PlanDraft draft, Random dice)
    {
        string[] chains = ["D-1", "D-1", "D-2", "P-1"];
        var chain = chains[dice.Next(chains.Length)];
        var windows = draft.Picture.Input.Windows.Where(w => w.Line == draft.Picture.Faces[chain].Row.Line).Take(6).ToArray();
        switch (dice.Next(7))
        {
            case < 3: draft.Move(chain, dice.Next(5) == 0 ? null : windows[dice.Next(windows.Length)].Id); break;
            case 3: draft.Hold(chain, (SwapPlacing)dice.Next(3)); break;
            case 4: draft.Undo(); break;
            case 5:
                draft.Suppose(new WhatIf(WindowId: windows[dice.Next(windows.Length)].Id, WindowDays: dice.Next(-30, 30)));
                break;
            default: draft.Suppose(null); break;
        }
    }
}
