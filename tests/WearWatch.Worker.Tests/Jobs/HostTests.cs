using Microsoft.Extensions.Options;

namespace WearWatch.Worker.Tests.Jobs;

public sealed class HostTests
{
    [Fact]
    public async Task A_started_worker_takes_in_what_is_dropped_as_its_clock_goes_on()
    {
        await using var plant = await TestPlant.OpenAsync(("InboxEvery", "00:00:05"));
        await File.WriteAllTextAsync(
            Path.Combine(plant.Folder.Inbox, "chains.csv"), "chain,pitch_mm\nC1,25.4\n", TestContext.Current.CancellationToken);
        await plant.StartAsync();
        var done = Path.Combine(plant.Folder.Inbox, "done", "chains.csv");
        for (var i = 0; i < 600 && !File.Exists(done); i++)
        {
            plant.Clock.Advance(TimeSpan.FromSeconds(5));
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.True(File.Exists(done));
    }

    [Theory]
    [InlineData("ReviewEvery", "00:00:01")]
    [InlineData("ReviewEvery", "2.00:00:00")]
    [InlineData("InboxEvery", "00:00:00")]
    [InlineData("TrainingHour", "24")]
    public async Task Settings_out_of_range_stop_the_start_and_say_which(string setting, string value)
    {
        var refused =
            await Assert.ThrowsAsync<OptionsValidationException>(async () => await TestPlant.OpenAsync((setting, value)));
        Assert.Contains(setting, refused.Message, StringComparison.Ordinal);
    }
}
