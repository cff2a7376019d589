using WearWatch.Plant.Settings;

namespace WearWatch.Worker.Tests.Register;

/// <summary>A new plant's first steps, one by one.</summary>
public sealed class FirstDayTests
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Fact]
    public async Task An_empty_plant_has_every_step_before_it()
    {
        await using var plant = await TestPlant.OpenAsync();
        var steps = await plant.Get<FirstDay>().AskAsync(Ct);
        Assert.Equal(Enum.GetValues<FirstStep>(), steps.Select(s => s.Step));
        Assert.All(steps, s => Assert.True(s.IsOpen));
    }

    [Fact]
    public async Task What_is_entered_is_done_and_what_is_missing_is_counted()
    {
        await using var plant = await TestPlant.OpenAsync();
        await plant.Get<PlantSettings>().ChangeAsync(p => p.TimeZone = "Europe/Vienna", Ct);
        await plant.AddChainAsync("C1");
        await plant.AddChainAsync("C2");
        await plant.Desk.TakeReadingAsync(A.Reading("C1"), Ct);
        var steps = (await plant.Get<FirstDay>().AskAsync(Ct)).ToDictionary(s => s.Step);
        Assert.True(steps[FirstStep.Zone].IsDone);
        Assert.True(steps[FirstStep.Chains].IsDone);
        Assert.Equal(new FirstStepState(FirstStep.FirstRound, 1, 2, IsSkipped: false), steps[FirstStep.FirstRound]);
        Assert.Equal((0, 1), (steps[FirstStep.Shutdowns].Done, steps[FirstStep.Shutdowns].Of));
    }

    [Fact]
    public async Task A_step_is_left_out_and_taken_up_again()
    {
        await using var plant = await TestPlant.OpenAsync();
        var day = plant.Get<FirstDay>();
        await day.SkipAsync(FirstStep.Shifts, skips: true, Ct);
        await day.SkipAsync(FirstStep.Spares, skips: true, Ct);
        Assert.Equal([FirstStep.Shifts, FirstStep.Spares], (await day.AskAsync(Ct)).Where(s => s.IsSkipped).Select(s => s.Step));
        await day.SkipAsync(FirstStep.Shifts, skips: false, Ct);
        Assert.Equal(FirstStep.Spares, Assert.Single(await day.AskAsync(Ct), s => s.IsSkipped).Step);
    }
}
