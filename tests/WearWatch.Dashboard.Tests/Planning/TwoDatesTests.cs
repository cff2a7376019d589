using Microsoft.EntityFrameworkCore;
using WearWatch.Dashboard.Planner;
using WearWatch.Planning.Supply;
using WearWatch.Plant.Planning;
using WearWatch.Storage.Rows;

namespace WearWatch.Dashboard.Tests.Planning;

/// <summary>The board and the job card say when pitches go, beside when the chain does; the card names the spare kit.</summary>
public sealed class TwoDatesTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Board_and_job_card_tell_when_to_shorten_and_what_to_lay_out()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await using (var db = await mill.Host.OpenAsync())
        {
            var chain = await db.Chains.SingleAsync(c => c.Name == "D-2", Ct);
            (chain.Attachments, chain.StoreNumber) = ("K1 every 4th pitch", "4711");
            await db.SaveChangesAsync(Ct);
            var from = mill.Get<TimeProvider>().GetUtcNow().AddDays(20);
            await db.Forecasts.Where(f => f.ChainId == chain.Id && f.IsLatest).ExecuteUpdateAsync(
                set => set.SetProperty(f => f.ShortenEarlyDate, from).SetProperty(f => f.ShortenPitches, 2), Ct);
        }

        await mill.KeepAProposalAsync();
        var card = (await mill.Get<JobCardQuery>().AskAsync("D-2", Ct))!;
        Assert.StartsWith(
            "take out 2 pitches from ", Assert.Single(card.Facts, f => f.Name == "Take-up").Value, StringComparison.Ordinal);
        Assert.Contains(("Attachments", "K1 every 4th pitch"), card.Facts);
        Assert.Contains(("Store number", "4711"), card.Facts);

        var board = PlanGridView.Of(
            new PlanDraft(await mill.Get<PlanQuery>().AskAsync(Ct)), new BoardFilter("", "", Folds: false), null);
        var cards = board.Lines.SelectMany(l => l.Cells).SelectMany(c => c.Cards).ToList();
        Assert.StartsWith("take out 2 pitches", Assert.Single(cards, c => c.Chain == "D-2").Shorten, StringComparison.Ordinal);
        Assert.All(cards.Where(c => c.Chain != "D-2"), c => Assert.Null(c.Shorten));
    }

    [Fact]
    public async Task A_group_is_shortened_together_at_the_first_date_of_it()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await using (var db = await mill.Host.OpenAsync())
        {
            var ids = await db.Chains.Where(c => c.Name == "D-1" || c.Name == "D-2").OrderBy(c => c.Name).Select(c => c.Id)
                .ToListAsync(Ct);
            await db.SwapTerms.Where(t => ids.Contains(t.ChainId)).ExecuteDeleteAsync(Ct);
            db.SwapTerms.AddRange(ids.Select(id => new SwapTermsRow { ChainId = id, ParallelGroup = "pair" }));
            await db.SaveChangesAsync(Ct);
            var from = mill.Get<TimeProvider>().GetUtcNow().AddDays(20);
            await db.Forecasts.Where(f => f.ChainId == ids[0] && f.IsLatest).ExecuteUpdateAsync(
                set => set.SetProperty(f => f.ShortenEarlyDate, from).SetProperty(f => f.ShortenPitches, 2), Ct);
        }

        var faces = (await mill.Get<PlanQuery>().AskAsync(Ct)).Faces;
        Assert.Equal((faces["D-1"].ShortenFrom, 2), (faces["D-2"].ShortenFrom, faces["D-2"].ShortenPitches));
        await mill.KeepAProposalAsync();
        var card = (await mill.Get<JobCardQuery>().AskAsync("D-2", Ct))!;
        Assert.EndsWith(
            ", together with D-1", Assert.Single(card.Facts, f => f.Name == "Take-up").Value, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_kit_of_a_position_goes_onto_its_orders_and_its_cut_list()
    {
        await using var mill = await PlannedHost.OpenAsync();
        await using (var db = await mill.Host.OpenAsync())
        {
            var chain = await db.Chains.SingleAsync(c => c.Name == "D-2", Ct);
            (chain.Attachments, chain.StoreNumber, chain.SprocketNumber) = ("K1 every 4th pitch", "4711", "W-17");
            await db.SaveChangesAsync(Ct);
        }

        await mill.KeepAProposalAsync();
        var view = await mill.Get<KeptPlan>().AskAsync(Ct);
        var part = view.JobOf("D-2")!.Task.Needs.First(n => n.Part.Kind == PartKind.Chain).Part;
        var (chainName, kit) = Assert.Single(view.Picture.KitsFor(part));
        Assert.Equal("D-2: K1 every 4th pitch, no. 4711", PackageWords.Kit(chainName, kit));
        Assert.Contains(PlanTable.Orders(view).Rows, row => row[0] as string == part.ToString()
            && (row[^2] as string)!.Contains("K1 every 4th pitch", StringComparison.Ordinal));
        var answer = PlanJson.Of(new PlanDraft(await mill.Get<PlanQuery>().AskAsync(Ct)));
        var told = answer.Orders.Single(o => o.Part == part.ToString()).Kits.Single(k => k.Chain == "D-2");
        Assert.Equal(("K1 every 4th pitch", "4711", ""), (told.Attachments, told.StoreNumber, told.SprocketNumber));
        Assert.Equal(told, answer.Swaps.Single(s => s.Chain == "D-2").Kit);
        Assert.Equal(view.JobOf("D-2")!.Cut, new(told.CutPitches, told.ConnectingLinks, told.OffsetLinks));
        var window = view.Plan.Placements.Single(p => p.Chain == "D-2").Window!;
        var cuts = WorkPackageTable.Of(WorkPackage.Of(view, window.Id)!)[^1];
        Assert.Contains(cuts.Rows, row => row[1] == "D-2" && row[3] == "K1 every 4th pitch" && row[4] == "4711");
    }
}
