namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>Each control of the desk is used by a browser test, as a person uses it.</summary>
public sealed class ControlTests
{
    [Fact]
    public void Every_control_with_a_name_is_used_by_a_browser_test()
    {
        var without = Controls.All.Where(c => c.Name.Length > 0 && !Controls.IsUsed(c.Name))
            .Select(c => $"{c.File}: {c.Name}").ToList();
        File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, "untested-controls.txt"), without);
        Assert.Empty(without);
    }

    /// <summary>A reading of the source that finds nothing would pass any other test.</summary>
    [Fact]
    public void The_reading_of_the_source_finds_buttons_and_fields_that_are_there()
    {
        Assert.Contains(("SparesPanel.razor", "Save this part"), Controls.All);
        Assert.Contains(("SparesPanel.razor", "Lead time, days"), Controls.All);
        Assert.Contains(("AfterStopLine.razor", "the old chain broke while it ran"), Controls.All);
        Assert.Contains(("ShutdownCalendar.razor", "Month before"), Controls.All);
        Assert.Contains(("SettingsPage.razor", "Utilisation"), Controls.All);
        Assert.True(Controls.All.Count > 350, $"only {Controls.All.Count} controls");
        Assert.False(Controls.IsUsed("No control has this name"));
    }
}
