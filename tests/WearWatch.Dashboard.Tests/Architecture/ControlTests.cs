namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>Each control of the desk is used by a browser test, as a person uses it.</summary>
public sealed class ControlTests
{
    /// <summary>Controls that no browser test reaches for yet: they only become fewer.</summary>
    private const int WithoutATest = 30;

    [Fact]
    public void Controls_that_no_browser_test_uses_only_become_fewer()
    {
        var without = Controls.All.Where(c => c.Name.Length > 0 && !Controls.IsUsed(c.Name))
            .Select(c => $"{c.File}: {c.Name}").ToList();
        File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, "untested-controls.txt"), without);
        Assert.InRange(without.Count, 0, WithoutATest);
    }

    /// <summary>A reading of the source that finds nothing would pass any other test.</summary>
    [Fact]
    public void The_reading_of_the_source_finds_buttons_and_fields_that_are_there()
    {
        Assert.Contains(("SparesPanel.razor", "Save this part"), Controls.All);
        Assert.Contains(("SparesPanel.razor", "Lead time, days"), Controls.All);
        Assert.Contains(("AfterStopLine.razor", "the old chain broke while it ran"), Controls.All);
        Assert.True(Controls.All.Count > 150, $"only {Controls.All.Count} controls");
        Assert.False(Controls.IsUsed("No control has this name"));
    }
}
