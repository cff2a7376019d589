using Microsoft.EntityFrameworkCore;
using WearWatch.Chains;
using WearWatch.Chains.Families;
using WearWatch.Gauging;
using WearWatch.Lifting.Examinations;
using WearWatch.Plant.Intake;
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
        await PairAsync(Mate);
        Taken(await StepAsync(LiftingStepKind.Disposed, "Vera"));

        var state = await StateOfAsync(Mate);
        Assert.Equal(LiftingVerdict.OutOfUse, state.VerdictOn(Today));
        Assert.Contains(state.On(Today), f => f.Kind == LiftingFaultKind.SetCondemned
            && f.Words.ToString().Contains(Name, StringComparison.Ordinal));
        Assert.Contains("chain", Fields(await Plant.Get<LiftingUseDesk>().TakeAsync(
            new NewLiftingStep("r", Mate, LiftingStepKind.Released, "Ola", "it looks good", []), Ct)));
    }

    [Fact]
    public async Task A_chain_that_is_read_at_its_limit_takes_the_other_of_its_pair_out_of_use_with_the_same_entry()
    {
        const string Mate = "LC-2";
        await PairAsync(Mate);
        Assert.DoesNotContain((await StateOfAsync(Mate)).Faults, f => f.Kind == LiftingFaultKind.SetCondemned);
        Taken(await Plant.Desk.TakeReadingAsync(
            new NewReading
            {
                Key = "r1",
                Chain = Name,
                TakenAt = TestPlant.Start,
                Pitches = 40,
                Length = "786.4", // 40 pitches of 19.05 mm at 3.2 %
                Tool = Tool.Caliper,
                ToldBy = "Ina",
                Confirmed = true,
            }, Ct));
        Assert.Contains((await StateOfAsync(Mate)).Faults, f => f.Kind == LiftingFaultKind.SetCondemned);
    }

    // Source: docs/references.md [22], [30]: never new chain beside old.
    [Fact]
    public async Task Where_only_one_of_a_pair_is_replaced_a_competent_person_examines_the_other_first()
    {
        const string Mate = "LC-2";
        await PairAsync(Mate);
        await ReplaceAsync(Name);
        Assert.Contains((await StateOfAsync(Mate)).Faults, f => f.Kind == LiftingFaultKind.SetMixed
            && f.Words.ToString().Contains(Name, StringComparison.Ordinal));
        await ReplaceAsync(Mate);
        Assert.DoesNotContain((await StateOfAsync(Mate)).Faults, f => f.Kind == LiftingFaultKind.SetMixed);
    }

    private async Task ReplaceAsync(string name) => Taken(await Plant.Desk.TakeEventAsync(
        new NewEvent
        {
            Key = "e" + name,
            Told = new ChainEvent { Chain = name, Kind = ChainEventKind.Replacement, At = TestPlant.Start },
            ToldBy = "Ina",
        }, Ct));

    private async Task PairAsync(string mate)
    {
        await Plant.Get<RegisterDesk>().AddAsync(
            new ChainCard { Name = mate, Line = "Store", Family = ChainFamily.Named("leaf"), PitchMm = 19.05 }, "Vera", ct: Ct);
        await AppointAsync();
        foreach (var name in new[] { Name, mate })
            Taken(await Plant.Get<LiftingCardDesk>().TakeAsync(new NewLiftingCard(name, null, Card(set: "mast 3")), Ct));
    }

    private async Task<LiftingState> StateOfAsync(string name)
    {
        await using var db = Plant.Db();
        var chain = await db.Chains.SingleAsync(c => c.Name == name, Ct);
        return (await db.LiftingStates.SingleAsync(s => s.ChainId == chain.Id, Ct)).ToState();
    }
}
