using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Lifting;
using WearWatch.Plant.Register;

namespace WearWatch.Worker.Tests.Lifting;

public sealed class LiftingSetTests : LiftingPlant
{
    // Source: leaf chain maker's and truck maker's rule, docs/references.md [22], [30]: the chains of a pair go together.
    [Fact]
    public async Task Where_one_chain_of_a_set_is_discarded_the_others_of_it_are_out_of_use_and_no_release_brings_them_back()
    {
        const string Mate = "LC-2";
        await Plant.Get<RegisterDesk>().AddAsync(
            new ChainCard { Name = Mate, Line = "Store", Family = ChainFamily.Named("leaf"), PitchMm = 19.05 }, "Vera", ct: Ct);
        await AppointAsync();
        foreach (var name in new[] { Name, Mate })
            Taken(await Plant.Get<LiftingCardDesk>().TakeAsync(new NewLiftingCard(name, null, Card(set: "mast 3")), Ct));
        Taken(await StepAsync(LiftingStepKind.Disposed, "Vera"));

        await using var db = Plant.Db();
        var mate = await db.Chains.SingleAsync(c => c.Name == Mate, Ct);
        var state = (await db.LiftingStates.SingleAsync(s => s.ChainId == mate.Id, Ct)).ToState();
        Assert.Equal(LiftingVerdict.OutOfUse, state.VerdictOn(Today));
        Assert.Contains(state.On(Today), f => f.Kind == LiftingFaultKind.SetCondemned
            && f.Words.Contains(Name, StringComparison.Ordinal));
        Assert.Contains("chain", Fields(await Plant.Get<LiftingUseDesk>().TakeAsync(
            new NewLiftingStep("r", Mate, LiftingStepKind.Released, "Ola", "it looks good", []), Ct)));
    }
}
