namespace WearWatch.Browser.Tests;

/// <summary>What the other tests rest on sees what it is for.</summary>
public sealed class VisitTests(Screen screen)
{
    [Fact]
    public async Task A_picture_without_words_and_pale_letters_are_barriers_and_a_plain_page_has_none()
    {
        await using var visit = await screen.AtDeskAsync();
        await visit.Page.SetContentAsync(
            "<html lang=en><title>t</title><main><h1>Plain</h1><p style='color:#999;background:#fff'>pale</p><img src=x></main>");
        var barriers = await visit.BarriersAsync();
        Assert.Contains(barriers, b => b.StartsWith("color-contrast", StringComparison.Ordinal));
        Assert.Contains(barriers, b => b.StartsWith("image-alt", StringComparison.Ordinal));
        await visit.Page.SetContentAsync("<html lang=en><title>t</title><main><h1>Plain</h1></main>");
        Assert.Empty(await visit.BarriersAsync());
    }
}
